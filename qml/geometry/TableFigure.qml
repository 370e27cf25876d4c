// SPDX-License-Identifier: MIT
import QtQuick
import Tripoise

// One figure of a table, marked by what to think of it; each mark is a form as well as a colour.
Item {
    id: cell
    required property var figure
    property bool current: false
    readonly property string mark: figure.mark
    readonly property bool wrong: mark === "contradicts" || mark === "not understood"
    signal acted()

    Accessible.role: Accessible.Cell
    Accessible.name: figure.spoken
    Accessible.description: figure.told
    Accessible.onPressAction: cell.acted()

    Rectangle {
        visible: cell.mark === "contradicts" || cell.mark === "corrected" || cell.current
        anchors.fill: parent
        anchors.margins: 1
        radius: Look.radius
        color: over.hovered && cell.figure.acts ? Look.tint : "transparent"
        border.width: cell.mark === "contradicts" ? 2 : cell.current ? 2 : 1
        border.color: cell.mark === "contradicts" && !cell.current ? Look.hazardText : Look.ink
    }
    Icon {
        id: sign
        visible: cell.mark === "contradicts" || cell.mark === "corrected"
        name: cell.mark === "corrected" ? "edit" : "hazard"
        color: cell.mark === "corrected" ? Look.ink : Look.hazardText
        x: Look.hairGap
        width: Look.small
        height: Look.small
        anchors.verticalCenter: parent.verticalCenter
    }
    InkText {
        id: words
        anchors.fill: parent
        anchors.leftMargin: sign.visible ? Look.hairGap + sign.width : 2
        anchors.rightMargin: Math.round(cell.width / 6)
        text: cell.figure.text
        horizontalAlignment: Text.AlignRight
        verticalAlignment: Text.AlignVCenter
        wrapMode: Text.NoWrap
        elide: Text.ElideRight
        font.italic: cell.mark === "follows" || cell.mark === "assumed"
        font.bold: cell.mark === "corrected"
        color: cell.wrong ? Look.hazardText
            : cell.mark === "follows" || cell.mark === "assumed" || cell.mark === "set aside" ? Look.soft : Look.ink
        Accessible.ignored: true
    }
    Rectangle { // doubtful and unusual: a line below, whole or in dots
        visible: cell.mark === "doubtful"
        anchors.right: words.right
        y: words.y + words.height - 4
        width: words.contentWidth
        height: 2
        color: Look.hazardText
    }
    Row {
        visible: cell.mark === "unusual"
        anchors.right: words.right
        y: words.y + words.height - 4
        spacing: 3
        Repeater {
            model: Math.floor(words.contentWidth / 5)
            Rectangle {
                width: 2
                height: 2
                color: Look.hazardText
            }
        }
    }
    HoverHandler {
        id: over
        cursorShape: cell.figure.acts ? Qt.PointingHandCursor : Qt.ArrowCursor
    }
    TapHandler { onTapped: cell.acted() }
    Hint {
        text: cell.figure.told
        visible: cell.figure.told && over.hovered
    }
}
