// SPDX-License-Identifier: MIT
import QtQuick
import QtQuick.Templates as T
import Tripoise

// A column that scrolls, and follows the keys: what gets the focus comes into view.
Flickable {
    id: scroll
    readonly property Item focused: Window.activeFocusItem
    contentWidth: width
    clip: true
    boundsBehavior: Flickable.StopAtBounds
    flickableDirection: Flickable.VerticalFlick

    onFocusedChanged: reveal(focused)

    function reveal(item: Item) {
        if (height <= 0) // not laid out yet
            return
        for (let up = item; up; up = up.parent) {
            if (up !== scroll.contentItem)
                continue
            const top = item.mapToItem(scroll.contentItem, 0, 0).y - Look.gap
            const bottom = top + item.height + 2 * Look.gap
            if (top < contentY)
                contentY = Math.max(0, top)
            else if (bottom > contentY + height)
                contentY = Math.min(Math.max(0, contentHeight - height), bottom - height)
            return
        }
    }

    T.ScrollBar.vertical: InkScrollBar {}
}
