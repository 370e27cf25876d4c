// SPDX-License-Identifier: MIT
import QtQuick
import QtQuick.Templates as T
import Tripoise

// A list of things to do, opened from a button.
T.Menu {
    id: menu
    implicitWidth: Math.max(180, contentItem.implicitWidth + leftPadding + rightPadding)
    implicitHeight: contentItem.implicitHeight + topPadding + bottomPadding
    margins: Look.hairGap
    padding: Look.hairGap
    delegate: InkMenuItem {}
    contentItem: ListView {
        implicitWidth: {
            let widest = 0
            for (let i = 0; i < count; ++i)
                widest = Math.max(widest, menu.itemAt(i) ? menu.itemAt(i).implicitWidth : 0)
            return widest
        }
        implicitHeight: contentHeight
        model: menu.contentModel
        interactive: false
        currentIndex: menu.currentIndex
    }
    background: Rectangle {
        color: Look.sheet
        radius: Look.radius
        border.width: 1
        border.color: Look.edge
    }
}
