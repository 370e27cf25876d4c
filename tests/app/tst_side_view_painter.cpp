// SPDX-License-Identifier: MIT
//
// The board's picture: another thread paints what this one would. All expected pictures are
// derived, painted at once by the painter of all pictures.
#include "support.h"

#include "board/side_view_painter.h"
#include "drawing/painter.h"

#include <QPainter>
#include <QTest>

using namespace tripoise;

namespace {

constexpr QSizeF size(640.0, 560.0);

PaintOrder orderOf(const char* demo, const Theme& theme = Theme::day(), double ratio = 1.0)
{
    const Fitting fitting = test::demoFitting(demo);
    const Tables& tables = test::tables();
    const Prepared prepared = prepare(fitting.frames, fitting.stock, tables);
    const Advice advice = advise(fitting.rider, fitting.riding, fitting.current, prepared, tables);
    PaintOrder order{size, ratio, theme, {}, {}, {}};
    order.view = makeSideView(advice, fitting.riding.mix, prepared, tables);
    order.options.furniture = false;
    order.options.lettersPx = 11.0;
    order.layout = layOut({QPointF(), size}, order.view, {}, order.options);
    return order;
}

/// By this thread, in one go.
QImage paintedAtOnce(const PaintOrder& order)
{
    QImage image((order.size * order.ratio).toSize(), QImage::Format_RGB32);
    image.setDevicePixelRatio(order.ratio);
    QPainter painter(&image);
    paintSideView(painter, {QPointF(), order.size}, order.view, order.theme, {}, order.options);
    return image;
}

} // namespace

class TestSideViewPainter : public QObject {
    Q_OBJECT

private slots:
    void shouldPaintWhatIsPaintedAtOnce_data()
    {
        QTest::addColumn<PaintOrder>("order");
        QTest::newRow("by day") << orderOf("between-two-sizes");
        QTest::newRow("by night") << orderOf("between-two-sizes", Theme::night());
        QTest::newRow("fine screen") << orderOf("between-two-sizes", Theme::day(), 1.5);
        QTest::newRow("one frame") << orderOf("one-frame-two-bikes");
    }
    void shouldPaintWhatIsPaintedAtOnce()
    {
        QFETCH(PaintOrder, order);
        SideViewPainter painter;
        painter.begin(order);
        QCOMPARE(painter.finished(), paintedAtOnce(order));
        QCOMPARE(painter.finished(), paintedAtOnce(order)); // asked for again
        SideViewPainter other;
        other.paint(order);
        QCOMPARE(other.finished(), paintedAtOnce(order));
    }

    void shouldPaintTheLastOfMany()
    {
        const std::array orders{orderOf("between-two-sizes"), orderOf("one-frame-two-bikes"),
                                orderOf("between-two-sizes", Theme::night()),
                                orderOf("between-two-sizes", Theme::day(), 2.0),
                                orderOf("short-rider-large-wheels")};
        SideViewPainter painter;
        for (int round = 0; round < 20; ++round) {
            for (int begun = 0; begun <= round % 3; ++begun) // some never asked for
                painter.begin(orders[std::size_t(round + begun) % orders.size()]);
            const PaintOrder* last = &orders[std::size_t(round + round % 3) % orders.size()];
            if (round % 4 == 0) {
                last = &orders[std::size_t(round / 4) % orders.size()];
                painter.paint(*last);
            }
            QCOMPARE(painter.finished(), paintedAtOnce(*last));
        }
        painter.begin(orders.front()); // and ends while it paints
    }
};

QTEST_MAIN(TestSideViewPainter)
#include "tst_side_view_painter.moc"
