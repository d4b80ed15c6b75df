#include "core/paperwork/csv.h"

#include "core/sketch/format/utf8.h"

#include <optional>

namespace siphonwright {
namespace {

constexpr std::string_view byte_order_mark = "\xEF\xBB\xBF";

/// Goes through the text once, byte by byte, and knows where it is.
class Reader {
public:
    explicit Reader(std::string_view text) : text_(text) {}

    std::variant<std::vector<CsvRow>, CsvProblem> table()
    {
        while (!problem_ && at_ < text_.size())
            row();
        if (!problem_)
            dropEmptyEnd();
        if (!problem_)
            judgeWidths();
        if (problem_)
            return *problem_;
        return std::move(rows_);
    }

private:
    bool ended() const { return at_ >= text_.size(); }
    char here() const { return text_[at_]; }
    bool lineEnds() const
    {
        return here() == '\n' || (here() == '\r' && at_ + 1 < text_.size() && text_[at_ + 1] == '\n');
    }

    void step()
    {
        const char c = text_[at_++];
        if (c == '\n') {
            ++line_;
            column_ = 1;
        } else if ((static_cast<unsigned char>(c) & 0xC0U) != 0x80U) { // no second byte of a character
            ++column_;
        }
    }

    void refuse(std::size_t line, std::size_t column, std::string what)
    {
        if (!problem_)
            problem_ = CsvProblem{line, column, std::move(what)};
    }
    void refuseHere(std::string what) { refuse(line_, column_, std::move(what)); }

    void row()
    {
        if (rows_.size() >= most_csv_lines)
            return refuseHere("more than " + std::to_string(most_csv_lines) + " lines");
        CsvRow row;
        for (bool more = true; more && !problem_;) {
            if (row.size() >= most_csv_columns)
                return refuseHere("more than " + std::to_string(most_csv_columns) + " fields in a line");
            row.push_back(field());
            more = !problem_ && !ended() && here() == ',';
            if (more)
                step();
        }
        if (problem_)
            return;
        while (!ended() && here() == '\r')
            step();
        if (!ended())
            step(); // the line feed
        rows_.push_back(std::move(row));
    }

    CsvField field()
    {
        CsvField out;
        out.line = line_;
        out.column = column_;
        if (!ended() && here() == '"')
            quoted(out);
        else
            plain(out);
        if (out.text.size() > longest_csv_field)
            refuse(out.line, out.column,
                   "a field of more than " + std::to_string(longest_csv_field) + " bytes");
        return out;
    }

    void plain(CsvField& out)
    {
        for (; !ended() && here() != ',' && !lineEnds(); step()) {
            if (here() == '"')
                return refuseHere("a quote inside a field that does not begin with one");
            if (here() == '\r' || here() == '\0')
                return refuseHere("a control character that ends no line");
            out.text += here();
        }
    }

    void quoted(CsvField& out)
    {
        for (step(); !ended(); step()) {
            if (here() == '\0')
                return refuseHere("a control character that ends no line");
            if (here() != '"') {
                out.text += here();
                continue;
            }
            step();
            if (ended() || here() == ',' || lineEnds())
                return;
            if (here() != '"')
                return refuseHere("text behind the quote that ends a field");
            out.text += '"';
        }
        refuse(out.line, out.column, "a field in quotes that does not end");
    }

    void dropEmptyEnd()
    {
        while (!rows_.empty() && rows_.back().size() == 1 && rows_.back().front().text.empty())
            rows_.pop_back();
    }

    void judgeWidths()
    {
        for (const CsvRow& row : rows_)
            if (row.size() != rows_.front().size())
                return refuse(row.front().line, row.front().column,
                              "a line of " + std::to_string(row.size()) + " fields, where the first has " +
                                  std::to_string(rows_.front().size()));
    }

    std::string_view text_;
    std::size_t at_ = 0;
    std::size_t line_ = 1;
    std::size_t column_ = 1;
    std::vector<CsvRow> rows_;
    std::optional<CsvProblem> problem_;
};

std::string quoted(const std::string& field)
{
    // A mark at its start would be taken for the file's, and left out.
    if (field.find_first_of(",\"\r\n") == std::string::npos && !field.starts_with(byte_order_mark))
        return field;
    std::string out = "\"";
    for (const char c : field)
        out += c == '"' ? std::string("\"\"") : std::string(1, c);
    return out + '"';
}

/// The line a byte stands in.
std::size_t lineOf(std::string_view text, std::size_t byte)
{
    std::size_t line = 1;
    for (const char c : text.substr(0, byte))
        line += c == '\n' ? 1 : 0;
    return line;
}

} // namespace

std::string CsvProblem::text() const
{
    return "Line " + std::to_string(line) + ", column " + std::to_string(column) + ": " + what + '.';
}

std::variant<std::vector<CsvRow>, CsvProblem> readCsv(std::string_view text)
{
    if (text.size() > largest_csv_bytes)
        return CsvProblem{1, 1, "a file of more than " + std::to_string(largest_csv_bytes >> 20U) + " MiB"};
    if (text.substr(0, byte_order_mark.size()) == byte_order_mark)
        text.remove_prefix(byte_order_mark.size());
    if (const std::size_t bad = firstNotUtf8(text); bad != text.size()) {
        const std::size_t begin = bad == 0 ? 0 : text.rfind('\n', bad - 1) + 1; // npos + 1 is 0
        return CsvProblem{lineOf(text, bad), characterCount(text.substr(begin, bad - begin)) + 1,
                          "a byte that is not UTF-8 text"};
    }
    return Reader(text).table();
}

std::string csvLine(const std::vector<std::string>& fields)
{
    std::string line;
    for (std::size_t i = 0; i < fields.size(); ++i)
        line += (i == 0 ? "" : ",") + quoted(fields[i]);
    // A line of one empty field would read as no line at all.
    return (fields.size() == 1 && fields.front().empty() ? "\"\"" : line) + "\r\n";
}

} // namespace siphonwright
