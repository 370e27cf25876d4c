// SPDX-License-Identifier: MIT
import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Tripoise

T.MenuItem {
    id: item
    property string keys // the shortcut, as it is said

    implicitHeight: Look.control
    implicitWidth: row.implicitWidth + leftPadding + rightPadding
    leftPadding: Look.gap
    rightPadding: Look.gap
    font.family: Look.family
    font.pixelSize: Look.body
    opacity: enabled ? 1 : 0.4
    Accessible.role: Accessible.MenuItem
    Accessible.name: text
    Accessible.checkable: checkable
    Accessible.checked: checked
    Keys.onReturnPressed: item.triggered()

    contentItem: RowLayout {
        id: row
        spacing: Look.wideGap
        Text {
            text: (item.checkable ? (item.checked ? "✓ " : "   ") : "") + item.text
            textFormat: Text.PlainText
            font: item.font
            color: Look.ink
            Layout.fillWidth: true
        }
        Text {
            text: item.keys
            textFormat: Text.PlainText
            font.family: Look.family
            font.pixelSize: Look.small
            color: Look.soft
        }
    }
    background: Rectangle {
        color: item.highlighted ? Look.tint : "transparent"
        border.width: item.highlighted ? 1 : 0
        border.color: Look.ink
    }
}
