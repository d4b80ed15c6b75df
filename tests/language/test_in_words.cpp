#include "tests/language/texts.h"

#include "app/document/document.h"
#include "app/language/in_words.h"
#include "app/language/language.h"

#include "core/sketch/edits.h"

#include <QLocale>
#include <QTest>
#include <QVariant>

using namespace siphonwright;

class TestInWords : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void cleanup() { QLocale::setDefault(QLocale::c()); }
    void english_is_what_core_says();
    void a_decimal_comma_is_written_and_read();
    void what_core_joins_is_translated_piece_by_piece();
    void a_name_stays_as_it_is();
    void a_label_begins_small_within_a_sentence();
    void a_new_part_is_named_in_the_language();
    void a_language_is_taken_off_the_command_line();
};

void TestInWords::english_is_what_core_says()
{
    const Message message{
        "{a} may sag {0} before it holds air or coolant.", {{12.54, Unit::mm}}, {"Return hose 1"}};
    QCOMPARE(inWords(message, UnitSystem::metric),
             QString::fromStdString(format(message, UnitSystem::metric)));
    const Message range{"{0-1} clear it.", {{2, Unit::mm}, {3, Unit::mm}}, {}};
    QCOMPARE(inWords(range, UnitSystem::metric), QString::fromStdString(format(range, UnitSystem::metric)));
    QCOMPARE(inWords(-0.02, Unit::slope, UnitSystem::metric), QStringLiteral("falls 1 in 50"));
}

void TestInWords::a_decimal_comma_is_written_and_read()
{
    QLocale::setDefault(QLocale(QLocale::German));
    QCOMPARE(inWords(19.1, Unit::mm, UnitSystem::metric), QStringLiteral("19,1 mm"));
    QCOMPARE(inWords(0.02, Unit::slope, UnitSystem::metric), QStringLiteral("1 in 50"));
    QCOMPARE(numberInWords(1234.5, 1), QStringLiteral("1234,5"));
    // The text for a file, whatever the locale.
    QCOMPARE(format(19.1, Unit::mm, UnitSystem::metric), std::string("19.1 mm"));
    for (const char* typed : {"1,125 l", "1.125 l", "1,125"})
        QCOMPARE(
            parse(typedQuantity(QString::fromLatin1(typed), Unit::litre), Unit::litre, UnitSystem::metric),
            std::optional<double>(1.125));
    // What is shown can be typed again.
    for (const double value : {19.1, 2.5, 1234.5})
        QCOMPARE(parse(typedQuantity(inWords(value, Unit::mm, UnitSystem::metric), Unit::mm), Unit::mm,
                       UnitSystem::metric),
                 std::optional<double>(value));
}

void TestInWords::what_core_joins_is_translated_piece_by_piece()
{
    PseudoTranslator strange;
    QCoreApplication::installTranslator(&strange);
    QVERIFY(inWords("the bore of Return hose 2 is not entered") !=
            QStringLiteral("the bore of Return hose 2 is not entered"));
    for (const char* text :
         {"the bore of Return hose 2 is not entered", "The hump in Supply hose 7", "level",
          "Free of traps from over {0} nose-down to {1} nose-up. Its hoses may sag {2} before "
          "they hold air or coolant.",
          "Parked from {2} nose-up and {3} right side up: {a} is only {0} over the ground "
          "at lowest ride height.",
          "{a}, where 9 in 10 lie over what is assumed: coolant leaves at {0} to {1}, on "
          "{2} to {3} times in the "
          "worst hour, target after {4} to {5}",
          "Move {a} {0} to the right, {1} down.", "Move {a} to the left by {0}, and lay its hoses anew.",
          ", in 3 rounds", "Parked {2} nose-down: {a} may sag {0} before it holds air or coolant.",
          "Head port, near bank", "Heater 3"})
        inWords(text);
    QCoreApplication::removeTranslator(&strange);
    QCOMPARE(strange.missing(), QStringList());
    // And there and back: what a field shows can be typed into it.
    QCoreApplication::installTranslator(&strange);
    for (const double slope : {0.02, -0.02, 0.0})
        QCOMPARE(parse(typedQuantity(inWords(slope, Unit::slope, UnitSystem::metric), Unit::slope),
                       Unit::slope, UnitSystem::metric),
                 std::optional<double>(slope));
    QCoreApplication::removeTranslator(&strange);
}

void TestInWords::a_name_stays_as_it_is()
{
    PseudoTranslator strange;
    QCoreApplication::installTranslator(&strange);
    const QString said =
        inWords(Message{"{a} touches {b}.", {}, {"Molly to the left", "Hilde"}}, UnitSystem::metric);
    QCoreApplication::removeTranslator(&strange);
    QVERIFY2(said.contains(QStringLiteral("Molly")) && said.contains(QStringLiteral("Hilde")),
             qPrintable(said));
}

void TestInWords::a_label_begins_small_within_a_sentence()
{
    QCOMPARE(language::withinSentence(QStringLiteral("Labour rate")), QStringLiteral("labour rate"));
    QCOMPARE(language::withinSentence(QStringLiteral("VAT")), QStringLiteral("VAT"));
    QCOMPARE(language::withinSentence(QString()), QString());
    // German nouns have a capital wherever they stand.
    QCoreApplication::instance()->setProperty("language", QStringLiteral("de"));
    const QString german = language::withinSentence(QStringLiteral("Stundensatz"));
    QCoreApplication::instance()->setProperty("language", QVariant());
    QCOMPARE(german, QStringLiteral("Stundensatz"));
}

void TestInWords::a_new_part_is_named_in_the_language()
{
    PseudoTranslator strange;
    QCoreApplication::installTranslator(&strange);
    Document document;
    for (int i = 0; i < 2; ++i)
        document.apply(QStringLiteral("add"), [](Sketch& sketch) { addHeater(sketch, Heater()); });
    QCoreApplication::removeTranslator(&strange);
    QCOMPARE(document.sketch().heaters.size(), std::size_t(2));
    QCOMPARE(QString::fromStdString(document.sketch().heaters[0].name), pseudo(QStringLiteral("Heater")));
    QCOMPARE(QString::fromStdString(document.sketch().heaters[1].name),
             pseudo(QStringLiteral("Heater")) + QStringLiteral(" 2"));
}

void TestInWords::a_language_is_taken_off_the_command_line()
{
    QStringList arguments = {QStringLiteral("check"), QStringLiteral("--language"), QStringLiteral("de"),
                             QStringLiteral("a.siphon")};
    QCOMPARE(language::takeOption(arguments), std::optional<QString>(QStringLiteral("de")));
    QCOMPARE(arguments, QStringList({QStringLiteral("check"), QStringLiteral("a.siphon")}));
    QStringList joined = {QStringLiteral("--language=fr")};
    QCOMPARE(language::takeOption(joined), std::optional<QString>(QStringLiteral("fr")));
    QVERIFY(joined.isEmpty());
    QStringList none = {QStringLiteral("a.siphon")};
    QCOMPARE(language::takeOption(none), std::optional<QString>(QString()));
    QStringList unknown = {QStringLiteral("--language"), QStringLiteral("xx")};
    QVERIFY(!language::takeOption(unknown));
    QStringList lacking = {QStringLiteral("--language")};
    QVERIFY(!language::takeOption(lacking));
}

QTEST_GUILESS_MAIN(TestInWords)
#include "test_in_words.moc"
