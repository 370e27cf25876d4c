// SPDX-License-Identifier: MIT
//
// The board's picture: another thread paints what this one would. All expected pictures are
// derived, painted at once by the painter of all pictures.
#include "support.h"

#include "board/side_view_painter.h"
#include "drawing/painter.h"

#include <QCoreApplication>
#include <QPainter>
#include <QTest>
#include <QThread>
#include <QTranslator>

#include <atomic>

using namespace tripoise;

namespace {

constexpr QSizeF size(640.0, 560.0);

PaintOrder orderOf(const char* demo, const Theme& theme = Theme::day(), double ratio = 1.0)
{
    const Fitting fitting = test::demoFitting(demo);
    const Tables& tables = test::tables();
    const Prepared prepared = prepare(fitting.frames, fitting.bicycle, fitting.stock, tables);
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

/// Translates nothing, and counts how often a thread that is not the window's asks.
class AskedElsewhere : public QTranslator {
public:
    [[nodiscard]] bool isEmpty() const override { return false; }
    [[nodiscard]] QString translate(const char*, const char*, const char*, int) const override
    {
        ++(QThread::currentThread() == qApp->thread() ? here : elsewhere);
        return {};
    }

    mutable std::atomic<int> here = 0;
    mutable std::atomic<int> elsewhere = 0;
};

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

    // The language may be changed while the other thread paints.
    void shouldMakeNoWordsElsewhere_data()
    {
        QTest::addColumn<bool>("dimensions");
        QTest::newRow("differences told") << false;
        QTest::newRow("dimensions") << true;
    }
    void shouldMakeNoWordsElsewhere()
    {
        QFETCH(bool, dimensions);
        AskedElsewhere asked;
        QVERIFY(QCoreApplication::installTranslator(&asked));
        PaintOrder order = orderOf("between-two-sizes");
        order.options.layers.dimensions = dimensions;
        order.layout = layOut({QPointF(), size}, order.view, {}, order.options);
        QCOMPARE(order.layout.leaders.empty(), dimensions);
        QVERIFY(asked.here > 0);
        SideViewPainter painter;
        painter.begin(order);
        QTest::qWait(50); // until the other thread has begun: else this one would paint
        (void)painter.finished();
        QCOMPARE(asked.elsewhere.load(), 0);
        QCoreApplication::removeTranslator(&asked);
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
