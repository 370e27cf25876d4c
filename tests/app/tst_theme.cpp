// SPDX-License-Identifier: MIT
//
// Contrast of both palettes against WCAG 2.2 (W3C Recommendation, 2023): success criteria 1.4.3,
// 4.5:1 for text, and 1.4.11, 3:1 for what a control or a drawing is known by. Formulas: the
// definitions of "relative luminance" and "contrast ratio" there.
#include "drawing/theme.h"

#include <QTest>

#include <algorithm>
#include <cmath>

using namespace tripoise;

namespace {

double linear(double channel)
{
    return channel <= 0.04045 ? channel / 12.92 : std::pow((channel + 0.055) / 1.055, 2.4);
}

double luminance(const QColor& color)
{
    return 0.2126 * linear(color.redF()) + 0.7152 * linear(color.greenF())
           + 0.0722 * linear(color.blueF());
}

double contrast(const QColor& one, const QColor& other)
{
    const auto [low, high] = std::minmax({luminance(one), luminance(other)});
    return (high + 0.05) / (low + 0.05);
}

struct Pair {
    const char* name;
    QColor Theme::*front;
    QColor Theme::*behind;
    double least;
};

constexpr double text = 4.5;
constexpr double mark = 3.0;
constexpr Pair pairs[] = {
    {"text", &Theme::ink, &Theme::paper, text},
    {"text in a field", &Theme::ink, &Theme::tube, text},
    {"text on what is chosen", &Theme::ink, &Theme::rider, text},
    {"second text", &Theme::soft, &Theme::paper, text},
    {"stand-in of a field", &Theme::soft, &Theme::tube, text},
    {"second text under the pointer", &Theme::soft, &Theme::rider, text},
    {"text of the other size", &Theme::otherText, &Theme::paper, text},
    {"the other size, chosen", &Theme::otherText, &Theme::rider, text},
    {"text of a hazard", &Theme::hazardText, &Theme::paper, text},
    {"text on a hazard", &Theme::hazardInk, &Theme::hazard, text},
    {"text on ink", &Theme::paper, &Theme::ink, text},
    {"outline of a control", &Theme::edge, &Theme::paper, mark},
    {"outline of a field", &Theme::edge, &Theme::tube, mark},
    {"lines of the other size", &Theme::other, &Theme::paper, mark},
    {"tyre on paper", &Theme::tyre, &Theme::paper, mark},
};

} // namespace

class TestTheme : public QObject {
    Q_OBJECT

private slots:
    void shouldMeasureAsDefined()
    {
        QCOMPARE(contrast(Qt::black, Qt::white), 21.0); // the definition's own extremes
        QCOMPARE(contrast(Qt::red, Qt::red), 1.0);
    }

    void shouldKeepContrast_data()
    {
        QTest::addColumn<QColor>("front");
        QTest::addColumn<QColor>("behind");
        QTest::addColumn<double>("least");
        for (const bool night : {false, true}) {
            const Theme theme = night ? Theme::night() : Theme::day();
            for (const Pair& pair : pairs)
                QTest::addRow("%s, %s", pair.name, night ? "night" : "day")
                    << theme.*pair.front << theme.*pair.behind << pair.least;
        }
    }
    void shouldKeepContrast()
    {
        QFETCH(QColor, front);
        QFETCH(QColor, behind);
        QFETCH(double, least);
        const double found = contrast(front, behind);
        QVERIFY2(found >= least, qPrintable(QStringLiteral("%1:1").arg(found)));
    }
};

QTEST_APPLESS_MAIN(TestTheme)
#include "tst_theme.moc"
