#include "core/sketch/file.h"
#include "core/sketch/format/describe_sketch.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QTest>

#include <fstream>
#include <sstream>

using namespace siphonwright;

namespace {

QJsonObject schema()
{
    return QJsonDocument::fromJson(QByteArray::fromStdString(sketchSchema())).object();
}

/// The schema of a struct's member; `$ref` is looked up by the test itself.
QJsonObject member(const QString& definition, const QString& name)
{
    return schema()[QStringLiteral("$defs")][definition][QStringLiteral("properties")][name].toObject();
}

/// Visits the keys and ranges that are described for a struct and everything inside it.
class RangeCheck {
public:
    void object(std::string_view /*name*/, std::string_view /*meaning*/) {}
    template <class M>
    void operator()(const Field& field, const M& value)
    {
        if (field.meaning.empty())
            fault(field, "has no meaning");
        look(field, value);
    }
    bool good() const { return good_; }

private:
    void fault(const Field& field, const char* what)
    {
        qWarning("%s %s", std::string(field.name).c_str(), what);
        good_ = false;
    }
    void look(const Field& field, double /*value*/)
    {
        if (!(field.least < field.most))
            fault(field, "has no range");
    }
    void look(const Field& field, std::int64_t /*value*/) { look(field, 0.0); }
    void look(const Field& field, int /*value*/)
    {
        if (field.whole_count == 0)
            fault(field, "allows no number");
    }
    void look(const Field& /*field*/, bool /*value*/) {}
    void look(const Field& /*field*/, const std::string& /*value*/) {}
    template <Word E>
    void look(const Field& /*field*/, E /*value*/)
    {}
    template <class T>
    void look(const Field& field, const std::optional<T>& /*value*/)
    {
        look(field, T{});
    }
    template <class T>
    void look(const Field& field, const std::vector<T>& /*value*/)
    {
        look(field, T{});
    }
    template <class T>
    void look(const Field& field, const Shared<T>& value)
    {
        look(field, *value);
    }
    template <class T>
    void look(const Field& field, const Fact<T>& fact)
    {
        describeFact(*this, field, fact);
    }
    template <class T>
    requires std::is_class_v<T>
    void look(const Field& /*field*/, const T& part) { describe(*this, part); }

    bool good_ = true;
};

} // namespace

class TestSketchSchema : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void theKeptSchemaIsTheOneTheProgramMakes();
    void everyNumberHasARangeAndEveryMemberAMeaning();
    void itStatesRangesWordsAndRequiredKeys();
    void everyReferenceLeadsToADefinition();
};

void TestSketchSchema::theKeptSchemaIsTheOneTheProgramMakes()
{
    std::ifstream file(SIPHONWRIGHT_SOURCE_DIR "/resources/sketch.schema.json", std::ios::binary);
    std::ostringstream kept;
    kept << file.rdbuf();
    const std::string made = sketchSchema();
    if (kept.str() != made) {
        std::ofstream("sketch.schema.json", std::ios::binary) << made;
        QFAIL("resources/sketch.schema.json is out of date: the new one is sketch.schema.json in the folder "
              "the test ran in");
    }
}

void TestSketchSchema::everyNumberHasARangeAndEveryMemberAMeaning()
{
    RangeCheck check;
    const Sketch sketch;
    describe(check, sketch);
    QVERIFY(check.good());
}

void TestSketchSchema::itStatesRangesWordsAndRequiredKeys()
{
    const QJsonObject wall = member(QStringLiteral("hose"), QStringLiteral("wall_mm"));
    QCOMPARE(wall[QStringLiteral("minimum")].toDouble(-1), 0.0);
    QCOMPARE(wall[QStringLiteral("maximum")].toDouble(), 300.0);
    QVERIFY(wall[QStringLiteral("description")].toString().endsWith(QStringLiteral("mm")));
    const QJsonObject role = member(QStringLiteral("hose"), QStringLiteral("role"));
    QCOMPARE(role[QStringLiteral("enum")].toArray(),
             (QJsonArray{QStringLiteral("supply"), QStringLiteral("return")}));
    const QJsonObject heading = member(QStringLiteral("engine"), QStringLiteral("heading_deg"));
    QCOMPARE(heading[QStringLiteral("enum")].toArray(), (QJsonArray{0, 90, 180, 270}));
    const QJsonValue point = schema()[QStringLiteral("$defs")][QStringLiteral("point_3d")];
    QCOMPARE(point[QStringLiteral("required")].toArray(),
             (QJsonArray{QStringLiteral("x"), QStringLiteral("y"), QStringLiteral("z")}));
    QCOMPARE(point[QStringLiteral("additionalProperties")], QJsonValue(false));
}

void TestSketchSchema::everyReferenceLeadsToADefinition()
{
    const std::string text = sketchSchema();
    const QJsonObject definitions = schema()[QStringLiteral("$defs")].toObject();
    const std::string mark = "\"$ref\": \"#/$defs/";
    int references = 0;
    for (std::size_t at = text.find(mark); at != std::string::npos; at = text.find(mark, at + 1)) {
        const std::size_t from = at + mark.size();
        const std::string name = text.substr(from, text.find('"', from) - from);
        QVERIFY2(definitions.contains(QString::fromStdString(name)), name.c_str());
        ++references;
    }
    // Each of the definitions is referred to at least once.
    QVERIFY(references >= definitions.size());
    QVERIFY(definitions.size() > 20);
}

QTEST_APPLESS_MAIN(TestSketchSchema)
#include "test_sketch_schema.moc"
