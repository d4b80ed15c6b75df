#pragma once

#include <QByteArray>
#include <QHash>
#include <QMutex>
#include <QString>
#include <QStringList>
#include <QTranslator>

#include <optional>
#include <vector>

namespace siphonwright::language {

/// Translates what core says as well, context "core". Core joins some of its texts, "the bore of Return hose
/// 2 is not entered": such a one is found again among those with places (coreWords()), "the bore of %1 is not
/// entered", and what stands in a place is translated by itself, or left where it is a name.
/// Safe to be asked from several threads, as Qt asks of a translator.
class CoreTranslator : public QTranslator {
    Q_OBJECT

public:
    explicit CoreTranslator(QObject* parent = nullptr);

    QString translate(const char* context, const char* source, const char* disambiguation = nullptr,
                      int n = -1) const override;

protected:
    /// A text just as it stands in the list; null where it is not translated.
    virtual QString listed(const char* context, const char* source, const char* disambiguation, int n) const;

private:
    /// A text with places: what is written before, between and behind them.
    struct Joint {
        QByteArray source;
        QStringList written;
        int letters = 0;
    };
    /// Whether all words of a text have to be translated, or some of its places may be names.
    enum class Reading { whole, with_names };
    std::optional<QString> read(const QString& text) const;
    std::optional<QString> read(const QString& text, Reading reading, int depth) const;
    std::optional<QString> readBare(const QString& text, Reading reading, int depth) const;
    std::optional<QString> readWhole(const QString& text) const;
    std::optional<QString> readJoint(const Joint& joint, const QString& text, Reading reading,
                                     int depth) const;
    std::optional<QString> readParts(const QString& text, Reading reading, int depth) const;

    std::vector<Joint> joints_; ///< those that say most come first
    mutable QMutex guard_;
    mutable QHash<QString, QString> known_; ///< joined texts that were read before
};

} // namespace siphonwright::language
