// SPDX-License-Identifier: MIT
//
// The decision in words: which size, why, what is given up, and what else a builder asks.
#pragma once

#include "session/session_holder.h"
#include "wording/sections.h"

namespace tripoise {

/// A heading and sentences under it; no sentences where there is nothing to tell.
class ToldSection {
    Q_GADGET
    QML_ANONYMOUS
    Q_PROPERTY(QString heading READ heading)
    Q_PROPERTY(QStringList items READ items)
    Q_PROPERTY(QString meaning READ meaning)

public:
    ToldSection() = default;
    explicit ToldSection(const Section& section);

    [[nodiscard]] const QString& heading() const { return m_heading; }
    [[nodiscard]] const QStringList& items() const { return m_items; }
    [[nodiscard]] const QString& meaning() const { return m_meaning; }

    bool operator==(const ToldSection&) const = default;

private:
    QString m_heading;
    QStringList m_items;
    QString m_meaning;
};

class DecisionModel : public QObject, public SessionHolder {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(tripoise::Session* session READ session WRITE setSession NOTIFY sessionChanged)
    Q_PROPERTY(State state READ state NOTIFY told)
    Q_PROPERTY(QString title READ title NOTIFY told)
    Q_PROPERTY(QString detail READ detail NOTIFY told)
    Q_PROPERTY(QString kind READ kind NOTIFY told)
    Q_PROPERTY(QString sentence READ sentence NOTIFY told)
    Q_PROPERTY(QStringList lacks READ lacks NOTIFY told)
    Q_PROPERTY(tripoise::ToldSection reasons READ reasons NOTIFY reasonsTold)
    Q_PROPERTY(tripoise::ToldSection givenUp READ givenUp NOTIFY givenUpTold)
    Q_PROPERTY(tripoise::ToldSection contrast READ contrast NOTIFY contrastTold)
    Q_PROPERTY(tripoise::ToldSection change READ change NOTIFY changeTold)
    Q_PROPERTY(tripoise::ToldSection today READ today NOTIFY todayTold)
    Q_PROPERTY(tripoise::ToldSection cranks READ cranks NOTIFY cranksTold)
    Q_PROPERTY(tripoise::ToldSection rules READ rules NOTIFY rulesTold)
    Q_PROPERTY(tripoise::ToldSection asked READ asked NOTIFY askedTold)
    Q_PROPERTY(QString toOrder READ toOrder NOTIFY told)
    Q_PROPERTY(QStringList cautions READ cautions NOTIFY cautionsTold)
    Q_PROPERTY(QStringList otherCautions READ otherCautions NOTIFY cautionsTold)
    Q_PROPERTY(tripoise::ToldSection sources READ sources NOTIFY cautionsTold)
    Q_PROPERTY(bool canCopy READ canCopy NOTIFY canCopyChanged)

public:
    enum State {
        Waiting,     ///< no answer yet
        Lacking,     ///< something has to be typed first
        NothingFits, ///< no part of the box goes on any size
        Decided,
    };
    Q_ENUM(State)

    using QObject::QObject;

    [[nodiscard]] State state() const { return m_told.verdict.state; }
    [[nodiscard]] QString title() const { return m_told.verdict.title; }
    [[nodiscard]] QString detail() const { return m_told.verdict.detail; }
    [[nodiscard]] QString kind() const { return m_told.verdict.kind; }
    [[nodiscard]] QString sentence() const
    {
        return m_told.verdict.sentence;
    } ///< the verdict in one
    /// What a decision still needs, as one would ask for it; the first stands in the title.
    [[nodiscard]] QStringList lacks() const { return m_told.verdict.lacks; }
    [[nodiscard]] ToldSection reasons() const { return m_told.reasons; }
    [[nodiscard]] ToldSection givenUp() const { return m_told.givenUp; }
    [[nodiscard]] ToldSection contrast() const { return m_told.contrast; }
    [[nodiscard]] ToldSection change() const { return m_told.change; }
    [[nodiscard]] ToldSection today() const { return m_told.today; } ///< of the size looked at
    [[nodiscard]] ToldSection cranks() const { return m_told.cranks; }
    [[nodiscard]] ToldSection rules() const { return m_told.rules; }
    /// The frame asked for; also while there is none to choose yet.
    [[nodiscard]] ToldSection asked() const { return m_told.asked; }
    /// The part that is worth ordering; empty where the box does.
    [[nodiscard]] QString toOrder() const { return m_told.verdict.toOrder; }
    /// Those that apply to this rider and the size looked at, and all others.
    [[nodiscard]] QStringList cautions() const { return m_told.cautions; }
    [[nodiscard]] QStringList otherCautions() const { return m_told.otherCautions; }
    [[nodiscard]] ToldSection sources() const { return m_told.sources; }

    /// Whether there is a decision, and it answers the fitting as it is now.
    [[nodiscard]] bool canCopy() const;
    /// The whole decision as plain text; empty while it cannot be copied.
    [[nodiscard]] Q_INVOKABLE QString text() const;
    Q_INVOKABLE void copy() const;

signals:
    void sessionChanged();
    void told(); ///< the verdict
    void reasonsTold();
    void givenUpTold();
    void contrastTold();
    void changeTold();
    void todayTold();
    void cranksTold();
    void rulesTold();
    void askedTold();
    void cautionsTold();
    void canCopyChanged();

private:
    struct Verdict {
        State state = Waiting;
        QString title;
        QString detail;
        QString kind;
        QString sentence;
        QStringList lacks;
        QString toOrder;

        bool operator==(const Verdict&) const = default;
    };
    struct Told {
        Verdict verdict;
        ToldSection reasons;
        ToldSection givenUp;
        ToldSection contrast;
        ToldSection change;
        ToldSection today;
        ToldSection cranks;
        ToldSection rules;
        ToldSection asked;
        QStringList cautions;
        QStringList otherCautions;
        ToldSection sources;
    };

    void sessionSet() override;
    void renew();
    [[nodiscard]] Told tell() const;

    Told m_told;
};

} // namespace tripoise
