#include "core/commissioning/iso_time.h"

#include "core/quantity/constants.h"

#include <array>

namespace siphonwright {
namespace {

/// Takes a text apart from its front; once something is missing, nothing more is taken.
class Reader {
public:
    explicit Reader(std::string_view text) : left_(text) {}

    bool good() const { return good_; }
    bool atEnd() const { return left_.empty(); }
    bool next(char wanted)
    {
        if (left_.empty() || left_.front() != wanted)
            return false;
        left_.remove_prefix(1);
        return true;
    }
    void expect(char wanted)
    {
        if (!next(wanted))
            good_ = false;
    }
    int digits(int count)
    {
        int value = 0;
        for (int i = 0; i < count; ++i) {
            if (left_.empty() || left_.front() < '0' || left_.front() > '9') {
                good_ = false;
                return 0;
            }
            value = value * 10 + (left_.front() - '0');
            left_.remove_prefix(1);
        }
        return value;
    }
    /// Digits after a point.
    double fraction()
    {
        double value = 0;
        double place = 0.1;
        while (!left_.empty() && left_.front() >= '0' && left_.front() <= '9') {
            value += place * (left_.front() - '0');
            place /= 10;
            left_.remove_prefix(1);
        }
        return value;
    }

private:
    std::string_view left_;
    bool good_ = true;
};

constexpr bool isLeap(int year)
{
    return (year % 4 == 0 && year % 100 != 0) || year % 400 == 0;
}

int daysIn(int year, int month)
{
    constexpr std::array<int, 12> days = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
    return month == 2 && isLeap(year) ? 29 : days.at(static_cast<std::size_t>(month - 1));
}

/// Days from 1970-01-01 to a date that exists.
int daysSince1970(int year, int month, int day)
{
    const auto leapsBefore = [](int of) { return (of - 1) / 4 - (of - 1) / 100 + (of - 1) / 400; };
    int days = year > 0 ? (year - 1970) * 365 + leapsBefore(year) - leapsBefore(1970) : 0;
    for (int m = 1; m < month; ++m)
        days += daysIn(year, m);
    return days + day - 1;
}

/// Seconds that a zone is ahead of UTC.
double zoneAhead(Reader& reader)
{
    if (reader.atEnd() || reader.next('Z'))
        return 0;
    const double sign = reader.next('-') ? -1 : 1;
    if (sign > 0)
        reader.expect('+');
    const int hours = reader.digits(2);
    reader.next(':');
    const int minutes = reader.digits(2);
    return sign * (hours * s_per_h + minutes * s_per_min);
}

} // namespace

std::optional<double> secondsOf(std::string_view iso_8601)
{
    Reader reader(iso_8601);
    const int year = reader.digits(4);
    reader.expect('-');
    const int month = reader.digits(2);
    reader.expect('-');
    const int day = reader.digits(2);
    if (!reader.next(' '))
        reader.expect('T');
    const int hour = reader.digits(2);
    reader.expect(':');
    const int minute = reader.digits(2);
    double second = 0;
    if (reader.next(':')) {
        second = reader.digits(2);
        if (reader.next('.'))
            second += reader.fraction();
    }
    const double ahead_s = zoneAhead(reader);
    const bool exists =
        year >= 1 && month >= 1 && month <= 12 && day >= 1 && hour <= 23 && minute <= 59 && second < 61;
    if (!reader.good() || !reader.atEnd() || !exists || day > daysIn(year, month))
        return std::nullopt;
    return daysSince1970(year, month, day) * s_per_day + hour * s_per_h + minute * s_per_min + second -
           ahead_s;
}

} // namespace siphonwright
