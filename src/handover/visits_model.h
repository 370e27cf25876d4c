// SPDX-License-Identifier: MIT
//
// Visits after the bicycle was built. The last one is worked on: what the rider says, what to
// change because of it, and what was changed.
#pragma once

// First: moc 6.4 fails on a standard header that it meets before any of Qt's.
#include "session/session_holder.h"

#include "advice/next_change.h"
#include "document/handed_over.h"

#include <QVariantList>

namespace tripoise {

class VisitsModel : public QObject, public SessionHolder {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(tripoise::Session* session READ session WRITE setSession NOTIFY sessionChanged)
    Q_PROPERTY(bool ready READ ready NOTIFY told)
    Q_PROPERTY(bool any READ any NOTIFY told)
    Q_PROPERTY(QString summary READ summary NOTIFY told)
    Q_PROPERTY(QString title READ title NOTIFY told)
    Q_PROPERTY(QVariantList complaints READ complaints NOTIFY told)
    Q_PROPERTY(QVariantList proposals READ proposals NOTIFY told)
    Q_PROPERTY(QString oneChange READ oneChange NOTIFY told)
    Q_PROPERTY(QStringList first READ first NOTIFY told)
    Q_PROPERTY(QString changed READ changed NOTIFY told)
    Q_PROPERTY(QString part READ part WRITE setPart NOTIFY told)
    Q_PROPERTY(QString notes READ notes WRITE setNotes NOTIFY told)
    Q_PROPERTY(QStringList history READ history NOTIFY told)
    Q_PROPERTY(bool moved READ moved NOTIFY told)

public:
    using QObject::QObject;

    [[nodiscard]] bool ready() const { return m_told.ready; } ///< there is a bicycle to come on
    [[nodiscard]] bool any() const { return !fitting().visits.empty(); }
    [[nodiscard]] const QString& summary() const { return m_told.summary; }
    [[nodiscard]] const QString& title() const { return m_told.title; } ///< of the last visit
    [[nodiscard]] const QVariantList& complaints() const { return m_told.complaints; }
    /// What to change, one for each complaint: text, trust, effects, value, taken.
    [[nodiscard]] const QVariantList& proposals() const { return m_told.proposals; }
    [[nodiscard]] const QString& oneChange() const { return m_told.oneChange; }
    /// What comes before any change: what is off, and what is a matter for others.
    [[nodiscard]] const QStringList& first() const { return m_told.first; }
    [[nodiscard]] const QString& changed() const { return m_told.changed; }
    [[nodiscard]] const QString& part() const { return m_told.part; }
    void setPart(const QString& part);
    [[nodiscard]] const QString& notes() const { return m_told.notes; }
    void setNotes(const QString& notes);
    /// What was built and what was said and changed before, the last first.
    [[nodiscard]] const QStringList& history() const { return m_told.history; }

    // Where they were on the finished bicycle, then after each visit; empty where that is not
    // known.
    [[nodiscard]] const std::vector<Point>& saddlePath() const { return m_told.saddlePath; }
    [[nodiscard]] const std::vector<Point>& handsPath() const { return m_told.handsPath; }
    [[nodiscard]] bool moved() const; ///< anything, at any visit

    Q_INVOKABLE void begin();  ///< a visit, today
    Q_INVOKABLE void remove(); ///< the last one
    Q_INVOKABLE void toggle(const QString& complaint);
    Q_INVOKABLE void take(int proposal); ///< it was changed so; the same again takes it back

signals:
    void sessionChanged();
    void told();

private:
    struct Told {
        bool ready = false;
        QString summary;
        QString title;
        QVariantList complaints;
        QVariantList proposals;
        QString oneChange;
        QStringList first;
        QString changed;
        QString part;
        QString notes;
        QStringList history;
        std::vector<Point> saddlePath;
        std::vector<Point> handsPath;

        bool operator==(const Told&) const = default;
    };

    void sessionSet() override;
    void show();
    /// The one the rider comes on; empty where nothing is decided.
    [[nodiscard]] std::optional<Finished> bicycle() const;
    [[nodiscard]] NextVisit next(const Finished& bicycle) const;
    [[nodiscard]] Told tell() const;
    void editLast(const QString& what, const std::function<void(Visit&)>& change);

    Told m_told;
};

} // namespace tripoise
