#pragma once

#include <QTableWidget>

#include <functional>

namespace siphonwright::paper {

/// A table some of whose cells are typed into. What is typed is taken or refused by one function; the table
/// shows what comes of it.
class EditTable : public QTableWidget {
    Q_OBJECT
public:
    /// \return why the text is refused; empty: taken
    using Take = std::function<QString(int row, int column, const QString& typed)>;
    EditTable(const QStringList& headings, Take take, QWidget* parent = nullptr);

    static constexpr Qt::Alignment figures = Qt::AlignRight | Qt::AlignVCenter;
    enum class Kind { shown, typed };
    void put(int row, int column, const QString& text, Kind kind = Kind::shown,
             Qt::Alignment alignment = Qt::AlignLeft | Qt::AlignVCenter);
    void embolden(int row, int column, bool bold);

Q_SIGNALS:
    void problemChanged(const QString& sentence);

private:
    void take(QTableWidgetItem* item);

    Take take_;
    bool filling_ = false;
};

} // namespace siphonwright::paper
