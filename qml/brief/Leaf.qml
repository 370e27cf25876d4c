// SPDX-License-Identifier: MIT
import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Tripoise

// A part of a section that folds away: a small line, and what is under it.
Column {
    id: leaf
    property string title
    property string summary
    property bool open: false
    readonly property alias heading: heading
    default property alias inside: body.data
    spacing: Look.hairGap

    T.AbstractButton {
        id: heading
        objectName: "heading"
        width: leaf.width
        implicitHeight: Math.max(Math.round(Look.control * 0.86), line.implicitHeight + Look.hairGap)
        focusPolicy: Qt.StrongFocus
        Accessible.role: Accessible.Button
        Accessible.name: leaf.summary ? leaf.title + ". " + leaf.summary : leaf.title
        Accessible.description: leaf.open ? qsTr("open") : qsTr("folded")
        Accessible.onPressAction: Presser.press(heading)
        onClicked: leaf.open = !leaf.open
        Keys.onReturnPressed: Presser.press(heading)
        Keys.onEnterPressed: Presser.press(heading)
        Keys.onLeftPressed: leaf.open = false
        Keys.onRightPressed: leaf.open = true

        contentItem: RowLayout {
            id: line
            spacing: Look.hairGap
            Icon {
                name: "fold"
                color: Look.soft
                rotation: leaf.open ? 90 : 0
                Layout.preferredWidth: Look.small
                Layout.preferredHeight: Look.small
            }
            InkText {
                text: leaf.title
                Layout.fillWidth: true
                Accessible.ignored: true
            }
            InkText {
                visible: leaf.summary
                text: leaf.summary
                font.pixelSize: Look.small
                color: Look.soft
                wrapMode: Text.NoWrap
                elide: Text.ElideRight
                Accessible.ignored: true
            }
        }
        background: Rectangle {
            color: heading.hovered ? Look.tint : "transparent"
            FocusRing { target: heading; anchors.margins: 0 }
        }
    }
    Item {
        visible: leaf.open
        width: leaf.width
        height: body.height + Look.smallGap
        Column {
            id: body
            x: Look.gap
            width: parent.width - x
            spacing: Look.hairGap
        }
    }
}
