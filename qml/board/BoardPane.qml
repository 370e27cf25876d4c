// SPDX-License-Identifier: MIT
import QtQuick
import QtQuick.Layouts
import Tripoise

// The drawing board with its controls above and what it tells below.
FocusScope {
    id: pane
    required property Session session
    required property Preferences preferences
    readonly property alias board: board
    property bool above: false // seen from above, not from the side

    function takeFocus() {
        const view = above && later.item ? later.item.topView : board
        view.forceActiveFocus(Qt.TabFocusReason)
    }
    function backToAdvised() {
        board.backToAdvised()
    }

    ColumnLayout {
        anchors.fill: parent
        spacing: 0

        BoardControls {
            id: controls
            objectName: "boardControls"
            board: board
            preferences: pane.preferences
            above: pane.above
            onLookAsked: above => pane.above = above
            Layout.fillWidth: true
        }
        Hairline { Layout.fillWidth: true }
        Board {
            id: board
            objectName: "drawing"
            visible: !pane.above
            session: pane.session
            night: Look.night
            letters: Look.small
            Layout.fillWidth: true
            Layout.fillHeight: true
            Accessible.role: Accessible.Graphic
            Accessible.name: handleText ? qsTr("Drawing, %1").arg(handleText) : qsTr("Drawing")
            Accessible.description: description
            Accessible.focusable: true

            InkText {
                visible: !board.drawn
                objectName: "nothingDrawn"
                anchors.centerIn: parent
                width: Math.min(parent.width - 2 * Look.wideGap, 420 * Look.textScale)
                horizontalAlignment: Text.AlignHCenter
                color: Look.soft
                text: board.nothingText
            }
            Hint { // beside the words that there is more
                objectName: "leftOut"
                text: board.hoverText
                visible: board.hoverText
                x: board.hoverAt.x - implicitWidth
                y: board.hoverAt.y
            }
            FocusRing {
                target: board
                anchors.margins: 1
            }
        }
        Item { // in place of the board
            visible: pane.above
            Layout.fillWidth: true
            Layout.fillHeight: true
        }
        Hairline {
            visible: !pane.above
            Layout.fillWidth: true
        }
        BoardReadout {
            objectName: "boardReadout"
            board: board
            visible: board.drawn && !pane.above
            Layout.fillWidth: true
        }
    }
    Later {
        id: later
        wanted: pane.above
        y: controls.y + controls.height + 1
        width: pane.width
        height: pane.height - y
        AbovePane {
            objectName: "abovePane"
            session: pane.session
        }
    }
}
