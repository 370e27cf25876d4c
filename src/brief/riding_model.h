// SPDX-License-Identifier: MIT
//
// What the bicycle is for: a mix of uses whose shares are linked, what rides along, and how the
// rider bends over it.
#pragma once

#include "entry/number_field.h"
#include "session/session_holder.h"

#include <QAbstractListModel>

namespace tripoise {

class RidingModel : public QAbstractListModel, public SessionHolder {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(tripoise::Session* session READ session WRITE setSession NOTIFY sessionChanged)
    Q_PROPERTY(QStringList presets READ presets NOTIFY changed)
    Q_PROPERTY(int preset READ preset NOTIFY changed)
    Q_PROPERTY(int foremost READ foremost NOTIFY changed)
    Q_PROPERTY(bool traffic READ traffic WRITE setTraffic NOTIFY changed)
    Q_PROPERTY(bool footRetention READ footRetention WRITE setFootRetention NOTIFY changed)
    Q_PROPERTY(QString feetDown READ feetDown WRITE setFeetDown NOTIFY changed)
    Q_PROPERTY(bool bendsFreely READ bendsFreely WRITE setBendsFreely NOTIFY changed)
    Q_PROPERTY(bool hasLuggage READ hasLuggage NOTIFY changed)
    Q_PROPERTY(tripoise::NumberField* luggageFront READ luggageFront CONSTANT)
    Q_PROPERTY(tripoise::NumberField* luggageRear READ luggageRear CONSTANT)
    Q_PROPERTY(QString summary READ summary NOTIFY changed)

public:
    enum Role { ShareRole = Qt::UserRole, ShareTextRole };

    explicit RidingModel(QObject* parent = nullptr);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

    /// Turned down and up again, a share gives the others back what it took.
    Q_INVOKABLE void setShare(int row, double share);
    /// A figure sets tens of per cent; whether it was one.
    Q_INVOKABLE bool pressKey(int row, const QString& text);
    Q_INVOKABLE void applyPreset(int preset);
    [[nodiscard]] QStringList presets() const;
    [[nodiscard]] int preset() const; ///< the one that is set, else -1

    [[nodiscard]] int foremost() const; ///< the row with the largest share

    [[nodiscard]] bool traffic() const;
    void setTraffic(bool traffic);
    [[nodiscard]] bool footRetention() const;
    void setFootRetention(bool footRetention);
    [[nodiscard]] QString feetDown() const; ///< word of the document; empty: not asked for
    void setFeetDown(const QString& word);
    [[nodiscard]] bool bendsFreely() const { return fitting().rider.bendsFreely; }
    void setBendsFreely(bool bendsFreely);
    [[nodiscard]] bool hasLuggage() const { return fitting().riding.luggage != Luggage{}; }
    Q_INVOKABLE void leaveLuggage();
    [[nodiscard]] NumberField* luggageFront() { return &m_front; }
    [[nodiscard]] NumberField* luggageRear() { return &m_rear; }
    [[nodiscard]] QString summary() const;

signals:
    void sessionChanged();
    void changed();

private:
    template <typename Change>
    void change(const QString& what, const QString& key, const Change& change);
    void sessionSet() override;
    void begin();
    void follow();

    Riding m_followed;
    bool m_followedBending = true;
    NumberField m_front;
    NumberField m_rear;
    int m_turned = -1; ///< the row whose share was set last,
    Mix m_from;        ///< what it was set from,
    Mix m_made;        ///< and what came of it
};

} // namespace tripoise
