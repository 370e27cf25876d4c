// SPDX-License-Identifier: MIT
import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Tripoise

// A section under a heading that folds; folded, the heading tells in a line what is inside.
Column { // not a layout: what folds and grows inside layouts is laid out twice
    id: fold
    property string title
    property string summary
    property bool open: true
    property string key // under which it is remembered; empty for one that is not
    property Preferences preferences
    readonly property alias heading: heading
    default property alias inside: body.data

    Component.onCompleted: {
        const kept = key && preferences ? preferences.value("fold/" + key, undefined) : undefined
        if (kept !== undefined)
            open = kept === true || kept === "true"
    }
    function turn(open: bool) {
        fold.open = open
        if (key && preferences)
            preferences.remember("fold/" + key, open)
    }

    T.AbstractButton {
        id: heading
        objectName: "heading"
        width: fold.width
        implicitHeight: Math.max(Look.control + Look.hairGap, words.implicitHeight + 2 * Look.hairGap)
        focusPolicy: Qt.StrongFocus
        Accessible.role: Accessible.Button
        Accessible.name: fold.open ? fold.title : fold.title + ". " + fold.summary
        Accessible.description: fold.open ? qsTr("open") : qsTr("folded")
        Accessible.onPressAction: Presser.press(heading)
        onClicked: fold.turn(!fold.open)
        Keys.onReturnPressed: Presser.press(heading)
        Keys.onEnterPressed: Presser.press(heading)
        Keys.onLeftPressed: fold.turn(false)
        Keys.onRightPressed: fold.turn(true)

        contentItem: Item {
            Icon {
                name: "fold"
                color: Look.soft
                rotation: fold.open ? 90 : 0
                width: Look.small
                height: Look.small
                anchors.verticalCenter: parent.verticalCenter
            }
            Column {
                id: words
                x: Look.small + Look.smallGap
                width: parent.width - x
                anchors.verticalCenter: parent.verticalCenter
                InkText {
                    width: parent.width
                    text: fold.title
                    font.bold: true
                    Accessible.ignored: true
                }
                InkText {
                    visible: !fold.open && fold.summary
                    width: parent.width
                    text: fold.summary
                    font.pixelSize: Look.small
                    color: Look.soft
                    elide: Text.ElideRight
                    wrapMode: Text.NoWrap
                    Accessible.ignored: true
                }
            }
        }
        background: Rectangle {
            color: heading.hovered ? Look.tint : "transparent"
            FocusRing { target: heading; anchors.margins: 0 }
        }
    }
    Column {
        id: body
        visible: fold.open
        spacing: Look.smallGap
        width: fold.width
        topPadding: Look.hairGap
        bottomPadding: Look.gap
        Component.onCompleted: {
            for (let i = 0; i < children.length; ++i)
                if (children[i].Layout && children[i].Layout.fillWidth)
                    children[i].width = Qt.binding(() => body.width)
        }
    }
    Hairline { width: fold.width }
}
