// SPDX-License-Identifier: MIT
import QtQuick
import QtQuick.Templates as T
import Tripoise

// A slider: a rule with a pointer on it.
T.Slider {
    id: slide
    property string name
    property string valueText // in words, for those who do not see it

    implicitHeight: Math.round(Look.control * 0.86)
    implicitWidth: 120
    Accessible.role: Accessible.Slider
    Accessible.name: valueText ? name + ", " + valueText : name

    background: Item {
        x: slide.leftPadding
        y: slide.topPadding
        width: slide.availableWidth
        height: slide.availableHeight
        Rectangle {
            anchors.verticalCenter: parent.verticalCenter
            width: parent.width
            height: 1
            color: Look.edge
        }
        Rectangle {
            anchors.verticalCenter: parent.verticalCenter
            width: slide.visualPosition * parent.width
            height: 3
            color: Look.ink
        }
    }
    handle: Rectangle {
        x: slide.leftPadding + slide.visualPosition * (slide.availableWidth - width)
        y: slide.topPadding + (slide.availableHeight - height) / 2
        width: 11
        height: Math.round(Look.control * 0.6)
        radius: Look.radius
        color: slide.pressed || slide.hovered ? Look.ink : Look.sheet
        border.width: 2
        border.color: Look.ink
        FocusRing { target: slide }
    }
}
