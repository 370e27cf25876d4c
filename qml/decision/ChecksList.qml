// SPDX-License-Identifier: MIT
import QtQuick
import Tripoise

// Limits that are broken and what else to look at; hazards have their sign.
Column {
    id: list
    required property ChecksModel checks
    property string which: "all" // "first", or "later" for the rest
    spacing: Look.smallGap

    Repeater {
        model: list.checks
        Column {
            id: check
            required property string told
            required property string level
            required property string levelWord
            required property string heading
            required property bool first
            visible: list.which === "all" || first === (list.which === "first")
            readonly property bool hazard: level !== "note"
            width: list.width
            spacing: Look.hairGap
            InkText {
                visible: check.heading
                width: parent.width
                text: check.heading
                font.bold: true
                Accessible.role: Accessible.Heading
            }
            Item {
                width: parent.width
                height: words.implicitHeight
                Icon {
                    visible: check.hazard
                    name: "hazard"
                    color: check.level === "limit" ? Look.hazard : Look.hazardText
                    width: Look.body
                    height: Look.body
                    y: 2
                }
                InkText {
                    visible: !check.hazard
                    text: "·"
                    font.bold: true
                    Accessible.ignored: true
                }
                InkText {
                    id: words
                    x: Look.wideGap
                    width: parent.width - x
                    text: check.told
                    font.bold: check.level === "limit"
                    lineHeight: 1.12
                    Accessible.name: check.levelWord + ": " + check.told
                }
            }
        }
    }
}
