#pragma once

#include <QFrame>

class QLabel;
class QPushButton;

namespace siphonwright::demonstration {

/// A question to the class, a count of hands, and the answer when it is asked for.
class Votes : public QFrame {
    Q_OBJECT
public:
    explicit Votes(QWidget* parent = nullptr);

    void setAnswer(const QString& verdict);
    /// Nobody has voted and nothing is revealed.
    void startAgain();
    int yes() const { return count_[0]; }
    int no() const { return count_[1]; }
    bool revealed() const { return revealed_; }
    void reveal();

Q_SIGNALS:
    void revealing();

private:
    void refresh();

    int count_[2] = {0, 0};
    bool revealed_ = false;
    QString answer_text_;
    QLabel* counts_[2];
    QPushButton* reveal_;
    QLabel* answer_;
};

} // namespace siphonwright::demonstration
