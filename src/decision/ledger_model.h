// SPDX-License-Identifier: MIT
//
// For and against: what speaks against the size looked at and the one beside it, consideration by
// consideration, and how much each counts. A bar tells how much, a value what; what they are added
// up in is never shown.
#pragma once

#include "decision/rows_model.h"

namespace tripoise {

class LedgerModel : public RowsModel {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(bool weightsChanged READ weightsChanged NOTIFY weighed)
    Q_PROPERTY(QString weightsNote READ weightsNote NOTIFY weighed)
    Q_PROPERTY(int quietCount READ quietCount NOTIFY weighed)
    Q_PROPERTY(QVariantList weightSteps READ weightSteps NOTIFY stepsChanged)

public:
    enum Role {
        Name = Qt::UserRole + 1,
        ShownValue,
        BesideValue,
        ShownBar, ///< 0 to 1, on one scale for all rows
        BesideBar,
        Better, ///< "shown", "beside" or "even"
        Quiet,  ///< speaks against neither and counts as usual
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
    [[nodiscard]] int quietCount() const { return m_quietCount; }
    /// The factors to choose from, of { text, value, hint }.
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
        double shownBar = 0.0;
        double besideBar = 0.0;
        QString better;
        bool quiet = false;
        QString about;
        QString aboutWeighing;
        double factor = 1.0;
        QString weight;
        QString spoken;

        bool operator==(const Row&) const = default;
    };

    [[nodiscard]] std::vector<Row> rowsOf(const Candidate& one, const Candidate* other) const;
    void step(int row, bool up);

    std::vector<Row> m_rows;
    bool m_weightsChanged = false;
    QString m_weightsNote;
    int m_quietCount = 0;
    QVariantList m_steps;
};

} // namespace tripoise
