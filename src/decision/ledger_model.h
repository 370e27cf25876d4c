// SPDX-License-Identifier: MIT
//
// For and against, consideration by consideration: what speaks for the size looked at and what for
// the one beside it, and how much each counts. A value tells what, a bar how much it decides: it
// lies on the side of the size it speaks for. With one size the bar is what speaks against it. What
// they are added up in is never shown.
#pragma once

#include "decision/rows_model.h"

namespace tripoise {

class LedgerModel : public RowsModel {
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
    enum Role {
        Name = Qt::UserRole + 1,
        ShownValue,
        BesideValue,
        ForShown,  ///< 0 to 1, on one scale for all rows; with one size, 0
        ForBeside, ///< the same; one of the two is 0
        Against,   ///< with one size; else 0
        Better,    ///< "shown", "beside" or "even"
        Remark,    ///< why, where the values look as if it were the other; mostly empty
        Quiet,     ///< decides nothing and counts as usual
        About,
        AboutWeighing, ///< the same, and what happens where it weighs more
        Factor,
        Weight, ///< in words; empty where it counts as usual
        Spoken,
    };

    using RowsModel::RowsModel;

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

    [[nodiscard]] int rowCount(const QModelIndex& parent) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

signals:
    void weighed();
    void stepsChanged();

protected:
    void renew() override;

private:
    struct Row {
        Consideration consideration = Consideration::Posture;
        QString name;
        QString shownValue;
        QString besideValue;
        double forShown = 0.0;
        double forBeside = 0.0;
        double against = 0.0;
        QString better;
        QString remark;
        bool quiet = false;
        QString about;
        QString aboutWeighing;
        double factor = 1.0;
        QString weight;
        QString spoken;

        bool operator==(const Row&) const = default;
    };

    /// Both with a set-up; the other is null where there is none to compare with.
    [[nodiscard]] std::vector<Row> rowsOf(const Candidate& one, const Candidate* other) const;
    void step(int row, bool up);

    std::vector<Row> m_rows;
    bool m_weightsChanged = false;
    QString m_weightsNote;
    QString m_shownTitle;
    QString m_besideTitle;
    QString m_rides;
    int m_quietCount = 0;
    QVariantList m_steps;
};

} // namespace tripoise
