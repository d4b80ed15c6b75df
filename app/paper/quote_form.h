#pragma once

#include "app/paper/entry.h"
#include "app/paper/paperwork.h"

#include <QWidget>

class QFormLayout;
class QLabel;

namespace siphonwright::paper {

/// What is entered once for an estimate: number, parties, currency, rates, sums.
class QuoteForm : public QWidget {
    Q_OBJECT
public:
    explicit QuoteForm(Document& document, QWidget* parent = nullptr);
    void refresh();

private:
    using Read = std::function<QString(const Quote&)>;
    void addHeading(const QString& text);
    void addLine(const QString& label, const QString& name, Read read, EntryLine::Take take,
                 const QString& placeholder = {});
    void addText(const QString& label, const QString& name, std::string Quote::*member);
    void addWords(const QString& label, const QString& name, std::string Quote::*member);
    void addCurrency();
    /// A whole number of steps that may be not entered; decimals under 0: the currency's.
    void addSteps(const QString& label, const QString& name, std::optional<std::int64_t> Quote::*member,
                  int decimals, std::int64_t most);
    void addWhole(const QString& label, const QString& name, std::int64_t Quote::*member, std::int64_t least,
                  std::int64_t most);
    QString takeCurrency(const QString& typed);

    Document& document_;
    QFormLayout* form_;
    QLabel* problem_;
    std::vector<std::function<void(const Quote&)>> shows_;
};

} // namespace siphonwright::paper
