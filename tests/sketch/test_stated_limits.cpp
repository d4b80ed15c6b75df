#include "core/paperwork/price_list.h"
#include "core/quantity/number.h"
#include "core/quantity/quantity.h"
#include "core/sketch/file.h"
#include "core/sketch/format/describe_sketch.h"
#include "core/sketch/format/json_tree.h"

#include <QFile>
#include <QTest>

#include <cmath>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <type_traits>
#include <vector>

using namespace siphonwright;

namespace {

/// Every described member by "object.member".
class Fields {
public:
    Fields()
    {
        Sketch sketch;
        sketch.hoses.emplace_back();
        sketch.areas.emplace_back();
        sketch.heaters.emplace_back();
        sketch.ports.emplace_back();
        sketch.readings.emplace_back();
        sketch.engine.emplace();
        describe(*this, sketch);
    }
    const Field& operator[](const std::string& name) const { return all_.at(name); }

    void object(std::string_view name, std::string_view /*meaning*/) { name_ = name; }
    template <class M>
    void operator()(const Field& field, M& member)
    {
        const std::string within = name_;
        all_.emplace(within + "." + std::string(field.name), field);
        look(field, member);
        name_ = within;
    }

private:
    template <class T>
    void look(const Field& field, T& part)
    {
        if constexpr (IsFact<T>::value)
            describeFact(*this, field, part);
        else if constexpr (std::is_class_v<T> && !std::is_same_v<T, std::string>)
            describe(*this, part);
    }
    template <class T>
    void look(const Field& field, std::optional<T>& value)
    {
        if (value)
            look(field, *value);
    }
    template <class T>
    void look(const Field& field, std::vector<T>& list)
    {
        for (T& item : list)
            look(field, item);
    }
    template <class T>
    void look(const Field& field, Shared<T>& shared)
    {
        shared.edit([&](T& inside) { look(field, inside); });
    }

    std::string name_;
    std::map<std::string, Field> all_;
};

/// 12345 as "12,345"; what is no whole number as it is.
QString number(double value)
{
    QString text = QString::fromStdString(exactText(value));
    if (value != std::floor(value))
        return text;
    text = QString::number(value, 'f', 0);
    const qsizetype first_digit = value < 0 ? 1 : 0;
    for (qsizetype at = text.size() - 3; at > first_digit; at -= 3)
        text.insert(at, QLatin1Char(','));
    return text;
}
template <class T>
requires std::is_integral_v<T> QString number(T count)
{
    return number(static_cast<double>(count));
}

} // namespace

/// The table of limits in the README says what the program holds to.
class TestStatedLimits : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void rowsOfTheReadmeAreThoseOfTheCode_data();
    void rowsOfTheReadmeAreThoseOfTheCode();
    void listsWithoutALimitOfTheirOwnShareOne();
};

void TestStatedLimits::rowsOfTheReadmeAreThoseOfTheCode_data()
{
    const Fields fields;
    QTest::addColumn<QString>("says");
    const auto row = [](const char* what, const QString& says) {
        QTest::newRow(what) << QStringLiteral("\n| %1 | %2").arg(QLatin1String(what), says);
    };
    row("File size", number(largest_file_bytes >> 20U) + QStringLiteral(" MiB"));
    row("Within it", QStringLiteral("%1 values, %2 levels deep, %3 keys in one object |")
                         .arg(number(most_values), number(deepest_nesting), number(most_keys)));
    row("Hoses; corners in one hose, in all together",
        QStringLiteral("%1; %2, %3 |")
            .arg(number(fields["sketch.hoses"].most_items), number(fields["hose.points"].most_items),
                 number(most_route_points)));
    const Field& outline = fields["area.outline"];
    row("Corners of an outline; of all areas together",
        QStringLiteral("%1 to %2; %3 |")
            .arg(number(outline.fewest_items), number(outline.most_items), number(most_area_corners)));
    row("Coordinates and lengths",
        QStringLiteral("within %1 m |").arg(number(fields["point_3d.x"].most / 1000)));
    const Field& bore = fields["hose.bore_mm"];
    row("Bores", QStringLiteral("%1 to %2 mm |").arg(number(bore.least), number(bore.most)));
    const Field& warm = fields["reading.inlet_degC"];
    row("Temperatures",
        QStringLiteral("%1 to %2 °C; ambient to %3 °C |")
            .arg(number(warm.least), number(warm.most), number(fields["site.ambient_degC"].most)));
    row("Price list",
        QStringLiteral("%1 MiB, %2 rows, amounts up to 10^12 minor units; any table: %3 lines, %4 "
                       "columns, %5 bytes in a field |")
            .arg(number(largest_csv_bytes >> 20U), number(most_prices), number(most_csv_lines),
                 number(most_csv_columns), number(longest_csv_field)));
    row("A quantity typed", number(longest_typed_bytes) + QStringLiteral(" bytes |"));
    row("Text",
        QStringLiteral("%1 characters; ids and names of rules %2 |")
            .arg(number(fields["sketch.notes"].longest_text), number(fields["hose.id"].longest_text)));
}

void TestStatedLimits::rowsOfTheReadmeAreThoseOfTheCode()
{
    QFETCH(QString, says);
    QFile file(QStringLiteral(SIPHONWRIGHT_SOURCE_DIR "/README.md"));
    QVERIFY(file.open(QIODevice::ReadOnly));
    QVERIFY2(QString::fromUtf8(file.readAll()).contains(says), qPrintable(says));
}

void TestStatedLimits::listsWithoutALimitOfTheirOwnShareOne()
{
    const Fields fields;
    for (const char* name :
         {"sketch.ports", "sketch.heaters", "sketch.areas", "sketch.readings", "hose.clips_mm", "hose.parts"})
        QCOMPARE(fields[name].most_items, std::size_t{1000}); // as the README says
    QVERIFY(dearest_minor_units == 1'000'000'000'000);
}

QTEST_APPLESS_MAIN(TestStatedLimits)
#include "test_stated_limits.moc"
