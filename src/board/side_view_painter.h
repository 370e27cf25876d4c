// SPDX-License-Identifier: MIT
//
// The board's picture, at the screen's own pixels. It is painted by a thread of its own, so that
// the window can make its words meanwhile. What lies behind the rider is kept from picture to
// picture.
#pragma once

#include "drawing/layout.h"
#include "drawing/theme.h"

#include <QImage>
#include <QRunnable>
#include <QThreadPool>

#include <array>
#include <optional>
#include <semaphore>

namespace tripoise {

/// All that a picture is painted from; its words are in the layout.
struct PaintOrder {
    QSizeF size;
    double ratio = 1.0; ///< screen pixels by px
    Theme theme;
    SideView view; ///< drawn
    DrawingLayout layout;
    DrawingOptions options;
};

class SideViewPainter : private QRunnable {
public:
    SideViewPainter();
    ~SideViewPainter() override;
    Q_DISABLE_COPY_MOVE(SideViewPainter)

    /// Has a picture painted by the other thread; waits for the one before.
    void begin(PaintOrder order);
    /// Paints one here and now.
    void paint(PaintOrder order);
    /// The last picture; waited for where it was only begun.
    [[nodiscard]] const QImage& finished();
    [[nodiscard]] const PaintOrder& order() const { return m_order; }

private:
    /// All that the picture behind depends on: it is kept until one of these changes.
    struct Behind {
        QSize size;
        double ratio = 1.0;
        Theme theme;
        Layers layers;
        DrawingFit fit;
        double thin = 0.0; ///< of lines, px
        QRectF scene;
        double groundY = 0.0;
        std::array<WheelSketch, 4> wheels; ///< of the chosen, of the other
        Point otherOffset = Point::Zero();

        bool operator==(const Behind&) const = default;
    };

    void run() override; ///< by the other thread
    void finish();
    void paint();
    [[nodiscard]] Behind behind() const;

    PaintOrder m_order;
    QImage m_behind;
    std::optional<Behind> m_behindOf;
    QImage m_picture;
    bool m_begun = false;
    std::binary_semaphore m_done{0};
    QThreadPool m_pool; ///< of one thread
};

} // namespace tripoise
