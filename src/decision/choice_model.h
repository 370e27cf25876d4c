// SPDX-License-Identifier: MIT
//
// The builder's word: a size or a set-up of their own, why, and what it costs beside the advice.
#pragma once

#include "session/session_holder.h"

#include <QStringList>

namespace tripoise {

class ChoiceModel : public QObject, public SessionHolder {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(tripoise::Session* session READ session WRITE setSession NOTIFY sessionChanged)
    Q_PROPERTY(bool any READ any NOTIFY told)
    Q_PROPERTY(QString reason READ reason WRITE setReason NOTIFY told)
    Q_PROPERTY(bool pulled READ pulled NOTIFY told)
    Q_PROPERTY(bool own READ own WRITE setOwn NOTIFY told)
    Q_PROPERTY(QStringList cautions READ cautions NOTIFY told)
    Q_PROPERTY(QString sentence READ sentence NOTIFY told)
    Q_PROPERTY(QString against READ against NOTIFY told)
    Q_PROPERTY(QStringList costs READ costs NOTIFY told)
    Q_PROPERTY(QString moved READ moved NOTIFY told)
    Q_PROPERTY(QStringList moves READ moves NOTIFY told)

public:
    using QObject::QObject;

    [[nodiscard]] bool any() const { return m_told.any; } ///< something was chosen
    [[nodiscard]] const QString& reason() const { return m_told.reason; }
    void setReason(const QString& reason);
    /// Whether a set-up was pulled about on the board, on a size that is there.
    [[nodiscard]] bool pulled() const { return m_told.pulled; }
    [[nodiscard]] bool own() const { return m_told.own; } ///< it is the builder's choice
    void setOwn(bool own);

    // As the text of the decision tells it.
    [[nodiscard]] const QStringList& cautions() const { return m_told.cautions; }
    [[nodiscard]] const QString& sentence() const { return m_told.sentence; }
    [[nodiscard]] const QString& against() const { return m_told.against; }
    [[nodiscard]] const QStringList& costs() const { return m_told.costs; }
    [[nodiscard]] const QString& moved() const { return m_told.moved; }
    [[nodiscard]] const QStringList& moves() const { return m_told.moves; }

signals:
    void sessionChanged();
    void told();

private:
    struct Told {
        bool any = false;
        QString reason;
        bool pulled = false;
        bool own = false;
        QStringList cautions;
        QString sentence;
        QString against;
        QStringList costs;
        QString moved;
        QStringList moves;

        bool operator==(const Told&) const = default;
    };

    void sessionSet() override;
    void renew();
    [[nodiscard]] Told tell() const;

    Told m_told;
};

} // namespace tripoise
