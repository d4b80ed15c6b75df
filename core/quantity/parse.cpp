#include "core/quantity/constants.h"
#include "core/quantity/number.h"
#include "core/quantity/quantity.h"
#include "core/quantity/units.h"

#include <algorithm>
#include <cmath>

namespace siphonwright {
namespace {

/// Reads one typed text; each function returns nothing and leaves `problem_` behind when it cannot.
class Reader {
public:
    Reader(std::string_view text, Unit unit, UnitSystem system) : rest_(text), unit_(unit), system_(system) {}

    std::optional<double> read()
    {
        if (rest_.empty())
            return refuse("Nothing was typed.");
        if (unit_ == Unit::slope)
            return readSlope();
        const double sign = takeSign();
        const auto size = unit_ == Unit::mm ? readLength() : std::nullopt;
        if (unit_ == Unit::mm)
            return size ? std::optional<double>(sign * *size) : std::nullopt;
        return readPlain(sign);
    }
    std::string problem() const
    {
        return problem_ + " Expected is " + std::string(formOf(unit_).example) + ".";
    }

private:
    std::optional<double> refuse(const std::string& why)
    {
        problem_ = why;
        return std::nullopt;
    }

    double takeSign()
    {
        const bool signed_text = rest_.front() == '-' || rest_.front() == '+';
        const double sign = rest_.front() == '-' ? -1 : 1;
        if (signed_text)
            rest_.remove_prefix(1);
        skipBlanks(rest_);
        return sign;
    }

    bool takeWord(std::string_view word)
    {
        if (rest_.substr(0, word.size()) != word)
            return false;
        rest_.remove_prefix(word.size());
        skipBlanks(rest_);
        return true;
    }

    /// What follows the number, without blanks: "fl oz" is "floz".
    std::string takeRemainder()
    {
        std::string word(rest_);
        word.erase(std::remove(word.begin(), word.end(), ' '), word.end());
        rest_ = {};
        return word;
    }

    std::optional<double> refuseUnit(const std::string& word)
    {
        if (word.find_first_of("0123456789") != std::string::npos)
            return refuse("“" + word + "” after the number was not understood.");
        return refuse("“" + word + "” is not a unit that fits here.");
    }

    /// A number and at most one unit.
    std::optional<double> readPlain(double sign)
    {
        const auto number = takeNumber(rest_, problem_);
        if (!number)
            return std::nullopt;
        const std::string word = takeRemainder();
        UnitWord meaning;
        if (word.empty()) {
            if (unit_ == Unit::ratio)
                return readBareShare(sign * *number);
            const Shown& shown = shownIn(unit_, system_);
            meaning = {shown.size, shown.offset};
        } else {
            const auto found = findUnitWord(unit_, word);
            if (!found)
                return refuseUnit(word);
            meaning = *found;
        }
        const double value = (sign * *number + meaning.offset) * meaning.size;
        if (unit_ != Unit::degC || value >= -zero_degC_in_K)
            return value;
        constexpr double rounded_away_K = 0.051; // absolute zero itself prints as -273.2 degC or -459.7 degF
        if (value < -zero_degC_in_K - rounded_away_K)
            return refuse("That is colder than absolute zero.");
        return -zero_degC_in_K;
    }

    /// A bare number as a share: 0.7 is 70 %, but 70 could be meant as either.
    std::optional<double> readBareShare(double number)
    {
        if (std::abs(number) <= 1)
            return number;
        return refuse("Without a % sign the number must lie between -1 and 1.");
    }

    /// Parts such as 2 ft and 3 1/2 in; only feet can be followed by inches.
    std::optional<double> readLength()
    {
        const auto first = readLengthPart(shownIn(Unit::mm, system_).size);
        if (!first || rest_.empty())
            return first ? std::optional<double>(first->number * first->size) : std::nullopt;
        if (first->size != mm_per_foot)
            return refuse("“" + std::string(rest_) + "” after the length was not understood.");
        takeWord("-");
        const auto second = readLengthPart(mm_per_inch);
        if (!second)
            return std::nullopt;
        if (second->size != mm_per_inch || !rest_.empty())
            return refuse("Only inches can follow feet.");
        if (!(second->number < 12))
            return refuse("Inches after feet must be fewer than 12.");
        return first->number * first->size + second->number * second->size;
    }

    struct LengthPart {
        double number;
        double size;
    };
    std::optional<LengthPart> readLengthPart(double size_without_unit)
    {
        const auto number = takeNumber(rest_, problem_);
        if (!number)
            return std::nullopt;
        skipBlanks(rest_);
        const std::size_t end = std::min(rest_.find_first_of(" 0123456789.,-"), rest_.size());
        const std::string word(rest_.substr(0, end));
        rest_.remove_prefix(end);
        skipBlanks(rest_);
        if (word.empty())
            return LengthPart{*number, size_without_unit};
        const auto found = findUnitWord(Unit::mm, word);
        if (!found) {
            refuseUnit(word);
            return std::nullopt;
        }
        return LengthPart{*number, found->size};
    }

    /// "level", "1 in 50", "1:50", "falls 1 in 30", "2 %", "0.02".
    std::optional<double> readSlope()
    {
        if (rest_ == "level")
            return 0;
        const bool falls = takeWord("falls ");
        if (!falls)
            takeWord("rises ");
        if (rest_.empty())
            return refuse("There is no number.");
        const double sign = takeSign() * (falls ? -1 : 1);
        const auto number = takeNumber(rest_, problem_);
        if (!number)
            return std::nullopt;
        skipBlanks(rest_);
        if (takeWord(":") || takeWord("in ")) {
            const auto run = takeNumber(rest_, problem_);
            if (!run)
                return std::nullopt;
            if (!(*run > 0) || !rest_.empty())
                return refuse("The second number of a slope must be over 0, with nothing after it.");
            return sign * *number / *run;
        }
        const std::string word = takeRemainder();
        if (word.empty())
            return readBareShare(sign * *number);
        const auto found = findUnitWord(Unit::slope, word);
        return found ? std::optional<double>(sign * *number * found->size) : refuseUnit(word);
    }

    std::string_view rest_;
    Unit unit_;
    UnitSystem system_;
    std::string problem_;
};

} // namespace

std::optional<double> parse(std::string_view text, Unit unit, UnitSystem system, std::string* problem)
{
    const std::string plain = text.size() <= longest_typed_bytes ? plainText(text) : std::string();
    Reader reader(plain, unit, system);
    const auto value = reader.read();
    if (value && std::isfinite(*value))
        return *value == 0 ? 0 : *value; // no negative zero
    if (problem) {
        if (text.size() > longest_typed_bytes)
            *problem = "The text is too long to be a quantity.";
        else if (value)
            *problem = "The number is too large.";
        else
            *problem = reader.problem();
    }
    return std::nullopt;
}

} // namespace siphonwright
