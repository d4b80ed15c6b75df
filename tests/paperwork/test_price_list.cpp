#include "core/paperwork/price_list.h"

#include <QTest>

#include <fstream>
#include <random>
#include <sstream>

using namespace siphonwright;

namespace {

std::vector<std::vector<std::string>> textsOf(const std::vector<CsvRow>& rows)
{
    std::vector<std::vector<std::string>> out;
    for (const CsvRow& row : rows) {
        out.emplace_back();
        for (const CsvField& field : row)
            out.back().push_back(field.text);
    }
    return out;
}

std::vector<std::vector<std::string>> readTexts(const std::string& text)
{
    const auto table = readCsv(text);
    if (const auto* problem = std::get_if<CsvProblem>(&table)) {
        qWarning("%s", problem->text().c_str());
        return {};
    }
    return textsOf(std::get<std::vector<CsvRow>>(table));
}

const char* const names = "item,description,unit,price,currency\r\n";

} // namespace

class TestPriceList : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void theExamplesOfTheStandardRead();
    void randomTablesSurvive();
    void aFieldThatBeginsWithAByteOrderMarkSurvives();
    void brokenTablesAreRefusedWithTheirPlace_data();
    void brokenTablesAreRefusedWithTheirPlace();
    void aListIsReadWhole();
    void brokenListsGiveNothing_data();
    void brokenListsGiveNothing();
    void aListSurvives();
    void aListBringsItsCurrencyAndMixesWithNoOther();
    void theSampleListIsRead();
};

// RFC 4180 (2005), section 2, its own examples.
void TestPriceList::theExamplesOfTheStandardRead()
{
    using Texts = std::vector<std::vector<std::string>>;
    QCOMPARE(readTexts("aaa,bbb,ccc\r\nzzz,yyy,xxx"), (Texts{{"aaa", "bbb", "ccc"}, {"zzz", "yyy", "xxx"}}));
    QCOMPARE(readTexts("\"aaa\",\"b\r\nbb\",\"ccc\"\r\nzzz,yyy,xxx\r\n"),
             (Texts{{"aaa", "b\r\nbb", "ccc"}, {"zzz", "yyy", "xxx"}}));
    QCOMPARE(readTexts("\"aaa\",\"b\"\"bb\",\"ccc\""), (Texts{{"aaa", "b\"bb", "ccc"}}));
    QCOMPARE(readTexts("\xEF\xBB\xBF"
                       "a,b\n,\n\n"),
             (Texts{{"a", "b"}, {"", ""}}));
}

void TestPriceList::randomTablesSurvive()
{
    std::mt19937 random(4180);
    const std::array<std::string, 9> pieces{"a", "\"", ",", "\r\n", "\n", " ", "é", "≤", "'"};
    for (int run = 0; run < 3000; ++run) {
        const std::size_t columns = 1 + random() % 5;
        std::vector<std::vector<std::string>> table(1 + random() % 5, std::vector<std::string>(columns));
        std::string text;
        for (auto& row : table) {
            for (std::string& field : row)
                for (std::size_t n = random() % 5; n > 0; --n)
                    field += pieces.at(random() % pieces.size());
            row.front() += "x"; // no empty lines at the end
            text += csvLine(row);
        }
        QVERIFY2(readTexts(text) == table, text.c_str());
    }
}

void TestPriceList::aFieldThatBeginsWithAByteOrderMarkSurvives()
{
    const std::vector<std::string> fields{"\xEF\xBB\xBF ", "b"};
    QCOMPARE(readTexts(csvLine(fields)), (std::vector<std::vector<std::string>>{fields}));
    QCOMPARE(readTexts("\xEF\xBB\xBF" + csvLine(fields)), (std::vector<std::vector<std::string>>{fields}));
}

void TestPriceList::brokenTablesAreRefusedWithTheirPlace_data()
{
    QTest::addColumn<QByteArray>("text");
    QTest::addColumn<int>("line");
    QTest::addColumn<int>("column");
    QTest::newRow("quote inside a field") << QByteArray("a,b\r\nc,d\"e\r\n") << 2 << 4;
    QTest::newRow("text behind a closing quote") << QByteArray("a,\"b\"c\r\n") << 1 << 6;
    QTest::newRow("a quote that stays open") << QByteArray("a,b\r\n\"c\r\nd") << 2 << 1;
    QTest::newRow("too few fields") << QByteArray("a,b\r\nc\r\n") << 2 << 1;
    QTest::newRow("too many fields") << QByteArray("a,b\r\nc,d\r\ne,f,g\r\n") << 3 << 1;
    QTest::newRow("a lone carriage return") << QByteArray("a,b\rc,d") << 1 << 4;
    QTest::newRow("not UTF-8, columns in characters") << QByteArray("a,b\r\n\xC3\xA9\xFF,d") << 2 << 2;
    QTest::newRow("a zero byte") << QByteArray("a,\0b", 4) << 1 << 3;
    QTest::newRow("a field too long")
        << QByteArray("a,") + QByteArray(static_cast<qsizetype>(longest_csv_field) + 1, 'x') << 1 << 3;
    QTest::newRow("a file too large")
        << QByteArray(static_cast<qsizetype>(largest_csv_bytes) + 1, '\n') << 1 << 1;
    QTest::newRow("too many fields in a line") << QByteArray(200, ',') << 1 << 101;
}

void TestPriceList::brokenTablesAreRefusedWithTheirPlace()
{
    QFETCH(QByteArray, text);
    QFETCH(int, line);
    QFETCH(int, column);
    const auto table = readCsv(text.toStdString());
    const auto* problem = std::get_if<CsvProblem>(&table);
    QVERIFY(problem != nullptr);
    QCOMPARE(static_cast<int>(problem->line), line);
    QCOMPARE(static_cast<int>(problem->column), column);
    QVERIFY(!problem->what.empty());
}

void TestPriceList::aListIsReadWhole()
{
    // Columns in another order, and one that says nothing here.
    const auto read = readPriceList("shelf,price,item,unit,currency,description\n"
                                    "A,2.5,clamp-27,each,USD,\"Clamp, 27 mm\"\n"
                                    "B,,hose-19.05,ft,USD,Hose\n");
    const auto* file = std::get_if<PriceListFile>(&read);
    QVERIFY(file != nullptr);
    QCOMPARE(file->currency.code, std::string("USD"));
    QCOMPARE(file->list.items.size(), std::size_t{2});
    QCOMPARE(file->list.items[0], (PricedItem{"clamp-27", "Clamp, 27 mm", PriceUnit::each, 250}));
    QCOMPARE(file->list.items[1], (PricedItem{"hose-19.05", "Hose", PriceUnit::foot, std::nullopt}));
}

void TestPriceList::brokenListsGiveNothing_data()
{
    QTest::addColumn<QByteArray>("text");
    QTest::addColumn<int>("line");
    QTest::addColumn<int>("column");
    const QByteArray head(names);
    QTest::newRow("empty") << QByteArray() << 1 << 1;
    QTest::newRow("no price") << head << 1 << 1;
    QTest::newRow("a column is missing") << QByteArray("item,unit,price,currency\na,each,1,USD\n") << 1 << 1;
    QTest::newRow("a column twice") << QByteArray(
                                           "item,description,unit,price,currency,unit\na,b,each,1,USD,m\n")
                                    << 1 << 38;
    QTest::newRow("semicolons") << QByteArray("item;description;unit;price;currency\n") << 1 << 1;
    QTest::newRow("a price in words") << head + "a,b,each,ten,USD\n" << 2 << 10;
    QTest::newRow("a price with thousands") << head + "a,b,each,\"1,000\",USD\n" << 2 << 10;
    QTest::newRow("a price under nothing") << head + "a,b,each,-1,USD\n" << 2 << 10;
    QTest::newRow("decimals that yen do not have") << head + "a,b,each,1.5,JPY\n" << 2 << 10;
    QTest::newRow("too large a price") << head + "a,b,each,10000000000000,USD\n" << 2 << 10;
    QTest::newRow("another unit") << head + "a,b,yard,1,USD\n" << 2 << 5;
    QTest::newRow("another currency") << head + "a,b,each,1,USD\nc,d,each,1,CAD\n" << 3 << 12;
    QTest::newRow("no currency") << head + "a,b,each,1,\n" << 2 << 12;
    QTest::newRow("no key") << head + ",b,each,1,USD\n" << 2 << 1;
    QTest::newRow("a key twice") << head + "a,b,each,1,USD\na,d,each,2,USD\n" << 3 << 1;
}

void TestPriceList::brokenListsGiveNothing()
{
    QFETCH(QByteArray, text);
    QFETCH(int, line);
    QFETCH(int, column);
    const auto read = readPriceList(text.toStdString());
    const auto* problem = std::get_if<CsvProblem>(&read);
    QVERIFY(problem != nullptr);
    QCOMPARE(static_cast<int>(problem->line), line);
    QCOMPARE(static_cast<int>(problem->column), column);
}

void TestPriceList::aListSurvives()
{
    PriceList list;
    list.items = {{"a", "with \"quotes\"\r\nand a line", PriceUnit::gallon, 123'456},
                  {"b", "", PriceUnit::each, std::nullopt},
                  {"c", "≤", PriceUnit::metre, 0}};
    const auto read = readPriceList(writePriceList(list, {"KWD", "", 3}));
    const auto* file = std::get_if<PriceListFile>(&read);
    QVERIFY(file != nullptr);
    QVERIFY(file->list.items == list.items);
    QCOMPARE(file->currency.minor_digits, 3);
}

void TestPriceList::aListBringsItsCurrencyAndMixesWithNoOther()
{
    PriceListFile file;
    file.currency.code = "JPY";
    file.currency.minor_digits = 0;
    file.list.items = {{"a", "", PriceUnit::each, 100}};
    Sketch sketch;
    QCOMPARE(takePrices(sketch, file, "Yen"), std::string());
    QCOMPARE((*sketch.quote)->currency.code, std::string("JPY"));
    QCOMPARE((*sketch.quote)->prices.name, std::string("Yen"));
    // A rate of 95.00 typed before would become 9500 yen.
    Sketch with_rate;
    Quote quote;
    quote.labour_rate_minor = 9500;
    with_rate.quote = Shared<Quote>(quote);
    const Sketch before = with_rate;
    QVERIFY(!takePrices(with_rate, file, "Yen").empty());
    QVERIFY(with_rate == before);
    with_rate.quote->edit([](Quote& changed) { changed.currency.code = "USD"; });
    file.currency.minor_digits = 2;
    QVERIFY(takePrices(with_rate, file, "Yen").find("USD") != std::string::npos);
}

void TestPriceList::theSampleListIsRead()
{
    std::ifstream file(SIPHONWRIGHT_SOURCE_DIR "/samples/prices-invented.csv", std::ios::binary);
    std::ostringstream text;
    text << file.rdbuf();
    const auto read = readPriceList(text.str());
    if (const auto* problem = std::get_if<CsvProblem>(&read))
        QFAIL(problem->text().c_str());
    const PriceListFile& list = std::get<PriceListFile>(read);
    QVERIFY(list.list.items.size() > 20);
    QCOMPARE(list.currency.minor_digits, 2);
    QCOMPARE(writePriceList(list.list, list.currency), text.str());
}

QTEST_APPLESS_MAIN(TestPriceList)
#include "test_price_list.moc"
