#pragma once

#include <QAbstractButton>
#include <QByteArray>
#include <QFile>
#include <QMessageBox>
#include <QString>
#include <QTemporaryDir>
#include <QTest>
#include <QTimer>
#include <QWidget>

#include <functional>
#include <sys/stat.h>

/// A place that does not answer, and the box that says so.
namespace siphonwright::test {

inline QByteArray bytesOf(const QString& path)
{
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray("unreadable");
}

/// Who opens a pipe waits for its other end, as for a drive that does not answer.
inline QString pipeIn(const QTemporaryDir& folder, const char* name)
{
    const QString path = folder.filePath(QString::fromLatin1(name));
    return ::mkfifo(QFile::encodeName(path).constData(), 0600) == 0 ? path : QString();
}

/// The place answers after all, to whoever waits for it, in the window or left behind.
inline void writeInto(const QString& pipe, const QByteArray& bytes)
{
    QFile other_end(pipe);
    QVERIFY(other_end.open(QIODevice::WriteOnly | QIODevice::Unbuffered));
    QCOMPARE(other_end.write(bytes), bytes.size());
}

inline QMessageBox* slowBox(const QWidget& window)
{
    return window.findChild<QMessageBox*>(QStringLiteral("slow-call"));
}

/// Press a button of that box by the first of its words.
inline void pressInBox(const QWidget& window, const char* words)
{
    for (QAbstractButton* one : slowBox(window)->buttons()) {
        if (one->text().remove(QLatin1Char('&')).startsWith(QLatin1String(words))) {
            one->click();
            return;
        }
    }
    QFAIL(words);
}

/// Do something as soon as that box says a thing.
inline void whenBoxSays(QWidget& window, const char* words, const std::function<void()>& act)
{
    auto* look = new QTimer(&window);
    QObject::connect(look, &QTimer::timeout, &window, [&window, look, words, act] {
        const QMessageBox* box = slowBox(window);
        if (!box || !box->isVisible() || !box->text().contains(QLatin1String(words)))
            return;
        look->deleteLater();
        look->stop();
        act();
    });
    look->start(10);
}

} // namespace siphonwright::test
