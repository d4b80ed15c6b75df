#include "app/headless/headless.h"
#include "app/language/language.h"

#include <QDir>
#include <QFile>
#include <QMap>
#include <QProcess>
#include <QRegularExpression>
#include <QSet>
#include <QTest>
#include <QTextStream>

using namespace siphonwright;

namespace {

using Words = QSet<QString>;
using ByCommand = QMap<QString, Words>;

const QString here = QStringLiteral(SIPHONWRIGHT_SOURCE_DIR);

QString textOf(const QString& path)
{
    QFile file(here + QLatin1Char('/') + path);
    return file.open(QIODevice::ReadOnly) ? QString::fromUtf8(file.readAll()) : QString();
}

Words optionsIn(const QString& text)
{
    static const QRegularExpression option(QStringLiteral("--[a-z][a-z-]*"));
    Words words;
    for (auto found = option.globalMatch(text); found.hasNext();)
        words << found.next().captured();
    return words;
}

/// A text's parts by command, where a command's part begins at `begins`, which captures its name.
QMap<QString, QString> partsOf(const QString& text, const QRegularExpression& begins)
{
    QMap<QString, QString> parts;
    qsizetype from = 0;
    QString command;
    for (auto found = begins.globalMatch(text); found.hasNext();) {
        const QRegularExpressionMatch match = found.next();
        parts[command] += text.mid(from, match.capturedStart() - from);
        from = match.capturedEnd();
        command = match.captured(1);
    }
    parts[command] += text.mid(from);
    parts.remove(QString()); // what speaks of no command
    return parts;
}

ByCommand optionsOf(const QMap<QString, QString>& parts)
{
    ByCommand options;
    for (auto at = parts.begin(); at != parts.end(); ++at)
        options[at.key()] = optionsIn(*at);
    return options;
}

const QRegularExpression a_call(QStringLiteral("^siphonwright (?:([a-z][a-z-]*)|)"),
                                QRegularExpression::MultilineOption);

QString help()
{
    QString out;
    QString err;
    QTextStream to_out(&out);
    QTextStream to_err(&err);
    runHeadless({QStringLiteral("--help")}, to_out, to_err);
    return out;
}

ByCommand inHelp()
{
    return optionsOf(partsOf(help(), a_call));
}

/// Whether the program itself takes the option: it is asked, without a file, so that nothing runs.
bool takes(const QString& command, const QString& option)
{
    QString out;
    QString err;
    QTextStream to_out(&out);
    QTextStream to_err(&err);
    runHeadless({command, option}, to_out, to_err);
    return !err.contains(QStringLiteral("does not know what to do with"));
}

/// What bash offers when the last of `words` is being typed.
Words offered(const QStringList& words)
{
    const QString script =
        QStringLiteral("source \"$1\"; shift; COMP_WORDS=(siphonwright \"$@\"); COMP_CWORD=$#; "
                       "_siphonwright; printf '%s\\n' \"${COMPREPLY[@]}\"");
    QProcess bash;
    bash.setWorkingDirectory(here + QStringLiteral("/samples"));
    bash.start(QStringLiteral("bash"),
               QStringList{QStringLiteral("--norc"), QStringLiteral("-c"), script, QStringLiteral("bash"),
                           here + QStringLiteral("/resources/install/siphonwright.bash")} +
                   words);
    if (!bash.waitForFinished())
        return {};
    const QStringList lines =
        QString::fromUtf8(bash.readAllStandardOutput()).split(QLatin1Char('\n'), Qt::SkipEmptyParts);
    return Words(lines.begin(), lines.end());
}

QString said(const ByCommand& words)
{
    QStringList lines;
    for (auto at = words.begin(); at != words.end(); ++at) {
        QStringList options(at->begin(), at->end());
        options.sort();
        lines << at.key() + QLatin1String(": ") + options.join(QLatin1Char(' '));
    }
    return lines.join(QLatin1Char('\n'));
}

} // namespace

/// Help, README, man page and completion say the same words as the program takes.
class TestCommandWords : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void theHelpListsExactlyWhatTheProgramTakes();
    void theReadmeListsThemToo();
    void theManPageListsThemToo();
    void bashOffersThemAndNoOthers();
    void bashOffersTheValuesOfTheHelp();
    void bashOffersTheLanguages();
    void bashOffersSketchesWhereOneIsWanted();
};

void TestCommandWords::theHelpListsExactlyWhatTheProgramTakes()
{
    QString sources;
    const QDir folder(here + QStringLiteral("/app/headless"));
    for (const QString& name : folder.entryList({QStringLiteral("*.cpp")}))
        sources += textOf(QStringLiteral("app/headless/") + name);
    const Words known = optionsIn(sources) - Words{QStringLiteral("--help"), QStringLiteral("--version")};
    QVERIFY(known.size() >= 15);
    ByCommand taken;
    const QStringList commands = inHelp().keys();
    for (const QString& command : commands)
        for (const QString& option : known)
            if (takes(command, option))
                taken[command] << option;
    QCOMPARE(said(inHelp()), said(taken));
    // Every command of the program is in the help: they are the names in its one table.
    static const QRegularExpression row(QStringLiteral("\\{\"([a-z-]+)\", +headless::"));
    Words table;
    for (auto found = row.globalMatch(textOf(QStringLiteral("app/headless/headless.cpp"))); found.hasNext();)
        table << found.next().captured(1);
    QCOMPARE(table, Words(commands.begin(), commands.end()));
}

void TestCommandWords::theReadmeListsThemToo()
{
    const QString readme = textOf(QStringLiteral("README.md"));
    const qsizetype from = readme.indexOf(QStringLiteral("siphonwright check FILE"));
    const QString block = readme.mid(from, readme.indexOf(QStringLiteral("```"), from) - from);
    const ByCommand words = optionsOf(partsOf(block, a_call));
    QCOMPARE(said(words), said(inHelp()));
}

void TestCommandWords::theManPageListsThemToo()
{
    QString page = textOf(QStringLiteral("resources/install/siphonwright.1"));
    page.replace(QStringLiteral("\\-"), QStringLiteral("-"));
    const QRegularExpression heading(QStringLiteral("^\\.S(?:S ([a-z-]+)|H [A-Z ]+)$"),
                                     QRegularExpression::MultilineOption);
    const ByCommand words = optionsOf(partsOf(page, heading));
    QCOMPARE(said(words), said(inHelp()));
    QVERIFY(page.contains(QStringLiteral("siphonwright " SIPHONWRIGHT_VERSION)));
}

void TestCommandWords::bashOffersThemAndNoOthers()
{
    const ByCommand wanted = inHelp();
    const Words names = offered({QString()});
    for (auto at = wanted.begin(); at != wanted.end(); ++at) {
        QVERIFY2(names.contains(at.key()), qPrintable(at.key()));
        QCOMPARE(offered({at.key(), QStringLiteral("x.siphon"), QStringLiteral("--")}),
                 *at + Words{QStringLiteral("--language")});
    }
    for (const QString& name : names)
        QVERIFY2(wanted.contains(name) || name.endsWith(QLatin1String(".siphon")), qPrintable(name));
    QCOMPARE(offered({QStringLiteral("--")}),
             (Words{QStringLiteral("--help"), QStringLiteral("--version"), QStringLiteral("--language")}));
}

void TestCommandWords::bashOffersTheValuesOfTheHelp()
{
    static const QRegularExpression paper(QStringLiteral("--paper ([A-Za-z0-9|]+)\\]"));
    int seen = 0;
    const QMap<QString, QString> parts = partsOf(help(), a_call);
    for (auto at = parts.begin(); at != parts.end(); ++at) {
        const QRegularExpressionMatch match = paper.match(*at);
        if (!match.hasMatch())
            continue;
        ++seen;
        const QStringList papers = match.captured(1).split(QLatin1Char('|'));
        QCOMPARE(offered({at.key(), QStringLiteral("--paper"), QString()}),
                 Words(papers.begin(), papers.end()));
        QCOMPARE(offered({at.key(), QStringLiteral("--paper"), QStringLiteral("="), QStringLiteral("A4")}),
                 Words{QStringLiteral("A4")});
    }
    QCOMPARE(seen, 2); // the sheet and the survey form
}

void TestCommandWords::bashOffersTheLanguages()
{
    Words wanted;
    for (const language::Language& one : language::languages())
        wanted << QString::fromLatin1(one.code);
    QCOMPARE(offered({QStringLiteral("check"), QStringLiteral("--language"), QString()}), wanted);
}

void TestCommandWords::bashOffersSketchesWhereOneIsWanted()
{
    QCOMPARE(offered({QStringLiteral("check"), QStringLiteral("supply")}),
             Words{QStringLiteral("supply-hump.siphon")});
    QCOMPARE(offered({QStringLiteral("parts"), QStringLiteral("x.siphon"), QStringLiteral("--prices"),
                      QStringLiteral("p")}),
             Words{QStringLiteral("prices-invented.csv")});
}

QTEST_MAIN(TestCommandWords)
#include "test_command_words.moc"
