// SPDX-License-Identifier: MIT
#include "board/vignette.h"

namespace tripoise {

Vignette::Vignette(QQuickItem* parent) : QQuickPaintedItem(parent) {}

void Vignette::setBoard(RiderBoard* board)
{
    if (m_board == board)
        return;
    if (m_board)
        m_board->disconnect(this);
    m_board = board;
    if (m_board) {
        connect(m_board, &RiderBoard::storyChanged, this, [this] { update(); });
        connect(m_board, &RiderBoard::lookChanged, this, [this] { update(); });
    }
    emit boardChanged();
    update();
}

void Vignette::setKind(int kind)
{
    if (m_kind == kind)
        return;
    m_kind = kind;
    emit kindChanged();
    update();
}

void Vignette::setLetters(double px)
{
    if (m_letters == px)
        return;
    m_letters = px;
    emit lettersChanged();
    update();
}

SideView::Bounds Vignette::subject() const
{
    return subjectOf(picture(), m_board->story());
}

DrawingFit Vignette::drawingFit() const
{
    return fitOf(size(), picture(), m_board->story(), m_letters);
}

void Vignette::paint(QPainter* painter)
{
    if (m_board)
        paintReason(*painter, size(), picture(), m_board->story(),
                    m_board->night() ? Theme::night() : Theme::day(), m_letters);
}

} // namespace tripoise
