// SPDX-License-Identifier: MIT
//
// The bicycle, whichever of its sizes is taken: tyres and mudguards, kind of bar, crank, pedals,
// saddle. Where sizes still have wheels of their own, which of these the bicycle has is asked; what
// is typed or chosen here is the answer.
#pragma once

#include "brief/form.h"
#include "brief/part_entries.h"
#include "session/session_holder.h"

#include <QtQml/qqmlregistration.h>

namespace tripoise {

class BicycleModel : public QObject, public SessionHolder {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(tripoise::Session* session READ session WRITE setSession NOTIFY sessionChanged)
    Q_PROPERTY(QList<QObject*> wheels READ wheels CONSTANT)
    Q_PROPERTY(QList<QObject*> guard READ guard CONSTANT)
    Q_PROPERTY(QList<QObject*> parts READ parts CONSTANT)
    Q_PROPERTY(bool mudguard READ mudguard NOTIFY changed)
    Q_PROPERTY(QString barKind READ barKind NOTIFY changed)
    Q_PROPERTY(QString soldUnder READ soldUnder WRITE setSoldUnder NOTIFY changed)
    Q_PROPERTY(QStringList standards READ standards CONSTANT)
    Q_PROPERTY(QStringList standardNames READ standardNames NOTIFY changed)
    Q_PROPERTY(QString wheelsDiffer READ wheelsDiffer NOTIFY changed)
    Q_PROPERTY(QVariantList answers READ answers NOTIFY changed)
    Q_PROPERTY(QString summary READ summary NOTIFY changed)

public:
    explicit BicycleModel(QObject* parent = nullptr);

    [[nodiscard]] QList<QObject*> wheels() const { return form(BicycleGroup::Wheels).fields(); }
    [[nodiscard]] QList<QObject*> guard() const { return form(BicycleGroup::Guard).fields(); }
    [[nodiscard]] QList<QObject*> parts() const { return form(BicycleGroup::Parts).fields(); }
    [[nodiscard]] bool mudguard() const { return fitting().bicycle.mudguard.has_value(); }
    [[nodiscard]] QString barKind() const; ///< as documents call it; empty: any in the box
    [[nodiscard]] QString soldUnder() const;
    void setSoldUnder(const QString& standard);
    [[nodiscard]] QStringList standards() const;     ///< words of the document
    [[nodiscard]] QStringList standardNames() const; ///< of the same, as they are said
    [[nodiscard]] QString wheelsDiffer() const;      ///< empty where they do not
    [[nodiscard]] QVariantList answers() const;      ///< the wheels there are, of { text, value }
    [[nodiscard]] QString summary() const;

    Q_INVOKABLE QString datumOf(tripoise::NumberField* field) const
    {
        return tripoise::datumOf(field);
    }
    Q_INVOKABLE void setMudguard(bool fitted);
    Q_INVOKABLE void setBarKind(const QString& word); ///< the same again takes it away
    Q_INVOKABLE void answer(int value);

signals:
    void sessionChanged();
    void changed();

private:
    void sessionSet() override;
    void show();
    void put(const Bicycle& bicycle, const QString& what, const QString& key);
    [[nodiscard]] const FormOf<Bicycle>& form(BicycleGroup group) const
    {
        return m_forms[static_cast<std::size_t>(group)];
    }

    std::vector<FormOf<Bicycle>> m_forms;
};

} // namespace tripoise
