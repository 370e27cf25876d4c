// SPDX-License-Identifier: MIT
//
// How the window looks, for QML: the palette of drawing/theme.h, one scale of letters and one of
// spaces.
#pragma once

#include "drawing/theme.h"

#include <QObject>
#include <QtQml/qqmlregistration.h>

namespace tripoise {

class Look : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON
    Q_PROPERTY(bool night READ night WRITE setNight NOTIFY changed)
    Q_PROPERTY(qreal textScale READ textScale WRITE setTextScale NOTIFY changed)

    Q_PROPERTY(QColor paper READ paper NOTIFY changed)
    Q_PROPERTY(QColor sheet READ sheet NOTIFY changed)
    Q_PROPERTY(QColor ink READ ink NOTIFY changed)
    Q_PROPERTY(QColor soft READ soft NOTIFY changed)
    Q_PROPERTY(QColor hair READ hair NOTIFY changed)
    Q_PROPERTY(QColor edge READ edge NOTIFY changed)
    Q_PROPERTY(QColor tint READ tint NOTIFY changed)
    Q_PROPERTY(QColor other READ other NOTIFY changed)
    Q_PROPERTY(QColor otherText READ otherText NOTIFY changed)
    Q_PROPERTY(QColor hazard READ hazard NOTIFY changed)
    Q_PROPERTY(QColor hazardText READ hazardText NOTIFY changed)
    Q_PROPERTY(QColor hazardInk READ hazardInk NOTIFY changed)

    Q_PROPERTY(QString family READ family CONSTANT)
    Q_PROPERTY(int small READ small NOTIFY changed)
    Q_PROPERTY(int body READ body NOTIFY changed)
    Q_PROPERTY(int large READ large NOTIFY changed)
    Q_PROPERTY(int title READ title NOTIFY changed)

    Q_PROPERTY(int hairGap READ hairGap CONSTANT)
    Q_PROPERTY(int smallGap READ smallGap CONSTANT)
    Q_PROPERTY(int gap READ gap CONSTANT)
    Q_PROPERTY(int wideGap READ wideGap CONSTANT)
    Q_PROPERTY(int control READ control NOTIFY changed)
    Q_PROPERTY(int radius READ radius CONSTANT)

public:
    [[nodiscard]] const Theme& theme() const { return m_theme; }

    [[nodiscard]] bool night() const { return m_night; }
    void setNight(bool night);
    [[nodiscard]] qreal textScale() const { return m_textScale; }
    void setTextScale(qreal scale); ///< 1 to 2

    [[nodiscard]] QColor paper() const { return m_theme.paper; }
    [[nodiscard]] QColor sheet() const { return m_theme.tube; } ///< what is written on: fields
    [[nodiscard]] QColor ink() const { return m_theme.ink; }
    [[nodiscard]] QColor soft() const { return m_theme.soft; }
    [[nodiscard]] QColor hair() const { return m_theme.hair; }
    [[nodiscard]] QColor edge() const { return m_theme.edge; }  ///< outline of a control
    [[nodiscard]] QColor tint() const { return m_theme.rider; } ///< what is hovered or chosen
    [[nodiscard]] QColor other() const { return m_theme.other; }
    [[nodiscard]] QColor otherText() const { return m_theme.otherText; }
    [[nodiscard]] QColor hazard() const { return m_theme.hazard; }
    [[nodiscard]] QColor hazardText() const { return m_theme.hazardText; }
    [[nodiscard]] QColor hazardInk() const { return m_theme.hazardInk; }

    [[nodiscard]] QString family() const { return QStringLiteral("DejaVu Sans"); }
    [[nodiscard]] int small() const { return letters(11.0); }
    [[nodiscard]] int body() const { return letters(13.0); }
    [[nodiscard]] int large() const { return letters(16.0); }
    [[nodiscard]] int title() const { return letters(21.0); }

    [[nodiscard]] int hairGap() const { return 4; }
    [[nodiscard]] int smallGap() const { return 8; }
    [[nodiscard]] int gap() const { return 12; }
    [[nodiscard]] int wideGap() const { return 20; }
    [[nodiscard]] int control() const { return letters(28.0); } ///< height of a control
    [[nodiscard]] int radius() const { return 2; }

signals:
    void changed();

private:
    [[nodiscard]] int letters(qreal px) const { return qRound(px * m_textScale); }

    bool m_night = false;
    qreal m_textScale = 1.0;
    Theme m_theme = Theme::day();
};

} // namespace tripoise
