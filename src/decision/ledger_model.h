// SPDX-License-Identifier: MIT
//
// For and against, consideration by consideration: what speaks for the size looked at and what for
// the one beside it, and how much each counts. A value tells what, a bar how much it decides: it
// lies on the side of the size it speaks for. With one size the bar is what speaks against it. What
// they are added up in is never shown.
#pragma once

#include "decision/rows_model.h"

namespace tripoise {

/// What speaks for which size, and how much.
struct LedgerRow {
    Q_GADGET
    Q_PROPERTY(QString name MEMBER name)
    Q_PROPERTY(QString shownValue MEMBER shownValue)
    Q_PROPERTY(QString besideValue MEMBER besideValue)
    Q_PROPERTY(double forShown MEMBER forShown)
    Q_PROPERTY(double forBeside MEMBER forBeside)
    Q_PROPERTY(double against MEMBER against)
    Q_PROPERTY(QString better MEMBER better)
    Q_PROPERTY(QString remark MEMBER remark)
    Q_PROPERTY(bool quiet MEMBER quiet)
    Q_PROPERTY(QString about MEMBER about)
    Q_PROPERTY(QString aboutWeighing MEMBER aboutWeighing)
    Q_PROPERTY(double factor MEMBER factor)
    Q_PROPERTY(QString weight MEMBER weight)
    Q_PROPERTY(QString spoken MEMBER spoken)

public:
    QString name;
    QString shownValue;
    QString besideValue;
    double forShown = 0.0;  ///< 0 to 1, on one scale for all rows; with one size, 0
    double forBeside = 0.0; ///< the same; one of the two is 0
    double against = 0.0;   ///< with one size; else 0
    QString better;         ///< "shown", "beside" or "even"
    QString remark;         ///< why, where the values look as if it were the other; mostly empty
    bool quiet = false;     ///< decides nothing and counts as usual
    QString about;
    QString aboutWeighing; ///< the same, and what happens where it weighs more
    double factor = 1.0;
    QString weight; ///< in words; empty where it counts as usual
    QString spoken;
    Consideration consideration = Consideration::Posture;

    bool operator==(const LedgerRow&) const = default;
};

class LedgerModel : public ListOf<LedgerRow, RowsModel> {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(bool weightsChanged READ weightsChanged NOTIFY weighed)
    Q_PROPERTY(QString weightsNote READ weightsNote NOTIFY weighed)
    Q_PROPERTY(QString shownTitle READ shownTitle NOTIFY weighed)
    Q_PROPERTY(QString besideTitle READ besideTitle NOTIFY weighed)
    Q_PROPERTY(int quietCount READ quietCount NOTIFY weighed)
    Q_PROPERTY(QString rides READ rides NOTIFY weighed)
    Q_PROPERTY(QVariantList weightSteps READ weightSteps NOTIFY stepsChanged)

public:
    using ListOf::ListOf;

    [[nodiscard]] bool weightsChanged() const { return m_weightsChanged; }
    /// What counts otherwise than usual, in a sentence; empty where nothing does.
    [[nodiscard]] QString weightsNote() const { return m_weightsNote; }
    /// Over the two sides, "for M"; empty where there is only one size to tell of.
    [[nodiscard]] const QString& shownTitle() const { return m_shownTitle; }
    [[nodiscard]] const QString& besideTitle() const { return m_besideTitle; }
    [[nodiscard]] int quietCount() const { return m_quietCount; }
    /// In what the two ride differently; empty with one size.
    [[nodiscard]] const QString& rides() const { return m_rides; }
    /// The factors to choose from, of { text, value, hint, spoken }.
    [[nodiscard]] const QVariantList& weightSteps() const { return m_steps; }

    Q_INVOKABLE void setWeight(int row, double factor);
    Q_INVOKABLE void heavier(int row); ///< the next step up, if there is one
    Q_INVOKABLE void lighter(int row);
    Q_INVOKABLE void resetWeights();

signals:
    void weighed();
    void stepsChanged();

protected:
    void renew() override;

private:
    /// Both with a set-up; the other is null where there is none to compare with.
    [[nodiscard]] std::vector<LedgerRow> rowsOf(const Candidate& one, const Candidate* other) const;
    void step(int row, bool up);

    bool m_weightsChanged = false;
    QString m_weightsNote;
    QString m_shownTitle;
    QString m_besideTitle;
    QString m_rides;
    int m_quietCount = 0;
    QVariantList m_steps;
};

} // namespace tripoise
