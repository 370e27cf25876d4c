// SPDX-License-Identifier: MIT
import QtQuick
import Tripoise

// A line that says what it means where the pointer or the keys are on it. The lines of a list are one
// stop of the tab key; up and down move among them.
Item {
    id: row
    required property MeaningStrip strip
    property string meaning
    property string spoken
    property int place: 0
    property MeantList list: null

    implicitWidth: parent ? parent.width : 0
    activeFocusOnTab: !list || list.stop === place || activeFocus
    Accessible.role: Accessible.ListItem
    Accessible.name: spoken
    Accessible.description: meaning
    Accessible.focusable: true
    Accessible.focused: activeFocus

    onVisibleChanged: list?.settle()
    onActiveFocusChanged: {
        if (activeFocus) {
            strip.focusOn(row, meaning)
            if (list)
                list.current = place
        } else {
            strip.focusOff(row)
        }
    }
    onMeaningChanged: {
        if (strip.focusedRow === row)
            strip.focusOn(row, meaning)
        if (strip.hoveredRow === row)
            strip.hover(row, meaning)
    }
    Component.onDestruction: {
        strip.leave(row)
        strip.focusOff(row)
    }
    Keys.onUpPressed: event => event.accepted = list !== null && list.step(place, -1)
    Keys.onDownPressed: event => event.accepted = list !== null && list.step(place, 1)

    HoverHandler {
        onHoveredChanged: {
            if (hovered)
                row.strip.hover(row, row.meaning)
            else
                row.strip.leave(row)
        }
    }
    TapHandler {
        onTapped: row.forceActiveFocus(Qt.MouseFocusReason)
    }
    Rectangle {
        anchors.fill: parent
        anchors.leftMargin: -Look.hairGap
        anchors.rightMargin: -Look.hairGap
        z: -1
        color: row.strip.hoveredRow === row ? Look.tint : "transparent"
        FocusRing { target: row; anchors.margins: 0 }
    }
}
