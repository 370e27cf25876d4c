// SPDX-License-Identifier: MIT
//
// What the tape says, one quantity a row: the two that are needed, those that tell most, and on
// request all others. What was not measured shows as it is inferred.
#pragma once

#include "entry/number_field.h"
#include "rider/measurements.h"
#include "session/session_holder.h"

#include <QAbstractListModel>

#include <optional>
#include <vector>

namespace tripoise {

class MeasurementsModel : public QAbstractListModel, public SessionHolder {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(tripoise::Session* session READ session WRITE setSession NOTIFY sessionChanged)
    Q_PROPERTY(bool all READ all WRITE setAll NOTIFY allChanged)
    Q_PROPERTY(QString missing READ missing NOTIFY missingChanged)

public:
    enum Role {
        FieldRole = Qt::UserRole, ///< NumberField, of one reading or two
        CertaintyRole,            ///< "once", "twice" or "guess"
        DatumRole,
        HowToRole,
        QuantityRole ///< the key, for its figure
    };

    explicit MeasurementsModel(QObject* parent = nullptr);

    [[nodiscard]] bool all() const { return m_all; }
    void setAll(bool all);
    [[nodiscard]] QString missing() const; ///< what is needed before anything can be said

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

    /// Once or a guess leave no second reading.
    Q_INVOKABLE void setCertainty(int row, const QString& certainty);
    /// A question mark behind a number makes it a guess, and no guess again; whether it was one.
    Q_INVOKABLE bool pressKey(int row, const QString& text);

signals:
    void sessionChanged();
    void allChanged();
    void missingChanged();

private:
    struct Row {
        Quantity quantity{};
        NumberField* field = nullptr;
        bool guess = false;
        QString certainty = QStringLiteral("once"); ///< as it was told
        std::optional<Measurement> stated;          ///< as it came from outside, with its sd
    };

    void addRow(Quantity quantity);
    void sessionSet() override;
    void follow();
    void infer();
    void begin();
    void write(std::size_t row);
    void tellCertainty(std::size_t row);
    void speakAnew();
    [[nodiscard]] const Measurement* measured(Quantity quantity) const;

    std::vector<Row> m_rows;
    bool m_all = false;
    bool m_writing = false;
};

} // namespace tripoise
