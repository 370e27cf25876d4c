// SPDX-License-Identifier: MIT
//
// The bicycle ridden today: its contacts, taken from the bottom bracket or from the saddle.
#pragma once

#include "advice/today.h"
#include "brief/form.h"
#include "session/session_holder.h"

#include <QVariantList>

namespace tripoise {

class TodayModel : public QObject, public SessionHolder {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(tripoise::Session* session READ session WRITE setSession NOTIFY sessionChanged)
    Q_PROPERTY(bool bySaddle READ bySaddle WRITE setBySaddle NOTIFY changed)
    Q_PROPERTY(QString barKind READ barKind WRITE setBarKind NOTIFY changed)
    Q_PROPERTY(QString use READ use WRITE setUse NOTIFY changed)
    Q_PROPERTY(QVariantList uses READ uses NOTIFY changed)
    Q_PROPERTY(QString ridden READ ridden WRITE setRidden NOTIFY changed)
    Q_PROPERTY(QString position READ position WRITE setPosition NOTIFY changed)
    Q_PROPERTY(bool comfortable READ comfortable WRITE setComfortable NOTIFY changed)
    Q_PROPERTY(QVariantList complaints READ complaints NOTIFY changed)
    Q_PROPERTY(bool anyComplaint READ anyComplaint NOTIFY changed)
    Q_PROPERTY(QString otherComplaints READ otherComplaints NOTIFY changed)
    Q_PROPERTY(bool known READ known NOTIFY changed)
    Q_PROPERTY(QString conversion READ conversion NOTIFY changed)
    Q_PROPERTY(QString note READ note NOTIFY changed)
    Q_PROPERTY(QString summary READ summary NOTIFY changed)
    Q_PROPERTY(QList<QObject*> contacts READ contacts CONSTANT)
    Q_PROPERTY(QList<QObject*> fromTheSaddle READ fromTheSaddle CONSTANT)
    Q_PROPERTY(QList<QObject*> ownParts READ ownParts CONSTANT)

public:
    explicit TodayModel(QObject* parent = nullptr);

    [[nodiscard]] bool bySaddle() const { return m_bySaddle; } ///< how it is being taken
    void setBySaddle(bool bySaddle);
    /// Of the bicycle of today, as documents call it; where on it the hand is follows from a bar
    /// of this kind in the box, or else from one as they usually are.
    [[nodiscard]] QString barKind() const;
    void setBarKind(const QString& word);
    /// Words of the document; empty where it is not told.
    [[nodiscard]] QString use() const;
    void setUse(const QString& word);
    [[nodiscard]] QVariantList uses() const; ///< to choose from: text, value
    [[nodiscard]] QString ridden() const;
    void setRidden(const QString& word);
    [[nodiscard]] QString position() const; ///< empty: kept where it is liked
    void setPosition(const QString& word);
    [[nodiscard]] bool comfortable() const { return bike().comfortable; }
    void setComfortable(bool comfortable);         ///< takes away what says otherwise
    [[nodiscard]] QVariantList complaints() const; ///< text, value, on
    Q_INVOKABLE void toggleComplaint(const QString& word);
    Q_INVOKABLE void clearComplaints();
    [[nodiscard]] bool anyComplaint() const;
    [[nodiscard]] QString otherComplaints() const; ///< those in a document's own words
    [[nodiscard]] bool known() const;              ///< anything at all
    Q_INVOKABLE QString datumOf(tripoise::NumberField* field) const
    {
        return tripoise::datumOf(field);
    }
    Q_INVOKABLE void clear();

    [[nodiscard]] QString conversion() const; ///< how the saddle's measures become contacts
    [[nodiscard]] QString note() const;       ///< what is still needed for that, or cannot be
    [[nodiscard]] QString summary() const;

    [[nodiscard]] QList<QObject*> contacts() const { return m_contacts->fields(); }
    [[nodiscard]] QList<QObject*> fromTheSaddle() const { return m_fromSaddle->fields(); }
    [[nodiscard]] QList<QObject*> ownParts() const { return m_parts->fields(); }

signals:
    void sessionChanged();
    void changed();

private:
    [[nodiscard]] CurrentBike bike() const;
    [[nodiscard]] CurrentBike takenOn(const CurrentBike& bike) const;
    [[nodiscard]] Bar bar() const;
    [[nodiscard]] TodayParts partsOf(const CurrentBike& bike) const;
    [[nodiscard]] TodayParts parts() const { return partsOf(bike()); }
    template <typename Value>
    void choose(std::optional<Value> CurrentBike::*member, std::optional<Value> value,
                const QString& what);
    void put(const CurrentBike& bike, const QString& what, const QString& key);
    void sessionSet() override;
    void begin();
    void follow();
    void show();

    std::optional<CurrentBike> m_followed;
    std::optional<Position> m_position;
    Stock m_stock;     ///< whose bar it was told by
    Bicycle m_bicycle; ///< and whose saddle
    bool m_bySaddle = false;
    FromSaddle m_taken;   ///< also what does not make a contact yet
    bool m_typed = false; ///< here, rather than read off the contacts
    std::optional<FormOf<CurrentBike>> m_contacts;
    std::optional<FormOf<CurrentBike>> m_parts;
    std::optional<FormOf<FromSaddle>> m_fromSaddle;
};

} // namespace tripoise
