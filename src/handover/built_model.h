// SPDX-License-Identifier: MIT
//
// The finished bicycle: what was read off it, held against what was handed to the workshop.
#pragma once

// First: moc 6.4 fails on a standard header that it meets before any of Qt's.
#include "session/session_holder.h"

#include "brief/form.h"
#include "document/handed_over.h"

namespace tripoise {

class BuiltModel : public QObject, public SessionHolder {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(tripoise::Session* session READ session WRITE setSession NOTIFY sessionChanged)
    Q_PROPERTY(QList<QObject*> readings READ readings CONSTANT)
    Q_PROPERTY(bool ready READ ready NOTIFY told)
    Q_PROPERTY(bool any READ any NOTIFY told)
    Q_PROPERTY(QString of READ of NOTIFY told)
    Q_PROPERTY(QString notes READ notes WRITE setNotes NOTIFY told)
    Q_PROPERTY(QString summary READ summary NOTIFY told)
    Q_PROPERTY(QStringList off READ off NOTIFY told)
    Q_PROPERTY(QStringList fine READ fine NOTIFY told)
    Q_PROPERTY(QStringList effects READ effects NOTIFY told)

public:
    explicit BuiltModel(QObject* parent = nullptr);

    [[nodiscard]] QList<QObject*> readings() const { return m_form->fields(); }
    /// Something is decided that can be built, or was built already.
    [[nodiscard]] bool ready() const { return m_told.ready; }
    [[nodiscard]] bool any() const { return m_told.any; }         ///< something was read
    [[nodiscard]] const QString& of() const { return m_told.of; } ///< which bicycle, and when
    [[nodiscard]] const QString& notes() const { return m_told.notes; }
    void setNotes(const QString& notes);
    [[nodiscard]] const QString& summary() const { return m_told.summary; }
    [[nodiscard]] const QStringList& off() const { return m_told.off; }
    [[nodiscard]] const QStringList& fine() const { return m_told.fine; }
    [[nodiscard]] const QStringList& effects() const { return m_told.effects; } ///< on the rider
    Q_INVOKABLE QString datumOf(tripoise::NumberField* field) const
    {
        return tripoise::datumOf(field);
    }
    Q_INVOKABLE void clear();

signals:
    void sessionChanged();
    void told();

private:
    struct Told {
        bool ready = false;
        bool any = false;
        QString of;
        QString notes;
        QString summary;
        QStringList off;
        QStringList fine;
        QStringList effects;

        bool operator==(const Told&) const = default;
    };

    void sessionSet() override;
    void show();
    void put(const AsBuilt& built, const QString& what, const QString& key);
    [[nodiscard]] AsBuilt built() const;
    [[nodiscard]] Told tell() const;

    std::optional<FormOf<AsBuilt>> m_form;
    Told m_told;
};

} // namespace tripoise
