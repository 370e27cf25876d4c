// SPDX-License-Identifier: MIT
//
// How the user likes the window: units, language, palette, size of letters, and what was open.
#pragma once

#include "session/session.h"

#include <QPointer>
#include <QTranslator>
#include <QVariant>
#include <QWindow>

namespace tripoise {

class Preferences : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(tripoise::Session* session MEMBER m_session)
    Q_PROPERTY(QString units READ units WRITE setUnits NOTIFY unitsChanged)
    Q_PROPERTY(QString language READ language WRITE setLanguage NOTIFY languageChanged)
    Q_PROPERTY(QString paper READ paper WRITE setPaper NOTIFY paperChanged)
    Q_PROPERTY(bool night READ night WRITE setNight NOTIFY nightChanged)
    Q_PROPERTY(double textScale READ textScale WRITE setTextScale NOTIFY textScaleChanged)

public:
    explicit Preferences(QObject* parent = nullptr);

    [[nodiscard]] const QString& units() const { return m_units; } ///< "metric" or "imperial"
    void setUnits(const QString& units);
    [[nodiscard]] const QString& language() const { return m_language; } ///< "en" or "de"
    void setLanguage(const QString& language);
    [[nodiscard]] const QString& paper() const { return m_paper; } ///< "a4" or "letter"
    void setPaper(const QString& paper);
    [[nodiscard]] bool night() const { return m_night; }
    void setNight(bool night);
    [[nodiscard]] double textScale() const { return m_textScale; } ///< 1 to 2
    void setTextScale(double scale);

    Q_INVOKABLE void toggleUnits();
    Q_INVOKABLE void toggleNight() { setNight(!m_night); }
    Q_INVOKABLE void largerText() { setTextScale(m_textScale + 0.25); }
    Q_INVOKABLE void smallerText() { setTextScale(m_textScale - 0.25); }

    /// What else is remembered: folds, layers.
    Q_INVOKABLE QVariant value(const QString& key, const QVariant& otherwise) const;
    Q_INVOKABLE void remember(const QString& key, const QVariant& value);

    Q_INVOKABLE void restoreWindow(QWindow* window) const;
    Q_INVOKABLE void rememberWindow(QWindow* window);

signals:
    void unitsChanged();
    void languageChanged();
    void paperChanged();
    void nightChanged();
    void textScaleChanged();

private:
    void installLanguage();
    void speakNow();

    QPointer<Session> m_session;
    QString m_units;
    QString m_language;
    QString m_paper;
    bool m_night = false;
    double m_textScale = 1.0;
    QTranslator m_qtWords;
    QTranslator m_translator;
};

} // namespace tripoise
