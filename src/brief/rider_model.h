// SPDX-License-Identifier: MIT
//
// The rider apart from what the tape says: who, how supple, in which shoes.
#pragma once

#include "entry/number_field.h"
#include "session/session_holder.h"

namespace tripoise {

class RiderModel : public QObject, public SessionHolder {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(tripoise::Session* session READ session WRITE setSession NOTIFY sessionChanged)
    Q_PROPERTY(QString label READ label WRITE setLabel NOTIFY changed)
    Q_PROPERTY(QString notes READ notes WRITE setNotes NOTIFY changed)
    Q_PROPERTY(QString sex READ sex WRITE setSex NOTIFY changed)
    Q_PROPERTY(QString flexibility READ flexibility WRITE setFlexibility NOTIFY changed)
    Q_PROPERTY(QString heelHabit READ heelHabit WRITE setHeelHabit NOTIFY changed)
    Q_PROPERTY(tripoise::NumberField* sole READ sole CONSTANT)
    Q_PROPERTY(tripoise::NumberField* shoeLength READ shoeLength CONSTANT)
    Q_PROPERTY(QString summary READ summary NOTIFY changed)

public:
    explicit RiderModel(QObject* parent = nullptr);

    [[nodiscard]] QString label() const;
    void setLabel(const QString& label);
    [[nodiscard]] QString notes() const;
    void setNotes(const QString& notes);
    /// Words of the document; empty where it is not stated.
    [[nodiscard]] QString sex() const;
    void setSex(const QString& sex);
    [[nodiscard]] QString flexibility() const;
    void setFlexibility(const QString& flexibility);
    [[nodiscard]] QString heelHabit() const;
    void setHeelHabit(const QString& habit);
    [[nodiscard]] NumberField* sole() { return &m_sole; }
    [[nodiscard]] NumberField* shoeLength() { return &m_shoeLength; }
    [[nodiscard]] QString summary() const; ///< "1790 mm, inseam 850 mm, arm 672 mm"

signals:
    void sessionChanged();
    void changed();

private:
    template <typename Change>
    void change(const QString& what, const QString& key, const Change& change);
    void sessionSet() override;
    void follow();

    NumberField m_sole;
    NumberField m_shoeLength;
};

} // namespace tripoise
