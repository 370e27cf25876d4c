// SPDX-License-Identifier: MIT
import QtQuick
import QtQuick.Templates as T
import Tripoise

// A sheet laid over the window.
T.Popup {
    id: sheet
    parent: T.Overlay.overlay
    anchors.centerIn: parent
    modal: true
    focus: true
    padding: Look.wideGap
    margins: Look.wideGap
    implicitWidth: contentItem.implicitWidth + leftPadding + rightPadding
    implicitHeight: contentItem.implicitHeight + topPadding + bottomPadding
    background: Rectangle {
        color: Look.paper
        border.width: 1
        border.color: Look.ink
        radius: Look.radius
    }
    T.Overlay.modal: Rectangle {
        color: Qt.alpha(Look.paper, 0.7)
    }
}
