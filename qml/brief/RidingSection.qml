// SPDX-License-Identifier: MIT
import QtQuick
import QtQuick.Layouts
import Tripoise

// What the bicycle is for.
Fold {
    id: section
    required property Session session

    title: qsTr("Riding")
    summary: riding.summary

    function applyPreset(index: int) { riding.applyPreset(index) }

    RidingModel { id: riding; session: section.session }

    Flow {
        spacing: Look.hairGap
        width: parent.width
        Repeater {
            model: riding.presets
            Chip {
                required property string modelData
                required property int index
                objectName: "preset" + index
                text: modelData
                checkable: false
                checked: riding.preset === index
                hint: qsTr("Ctrl+%1").arg(index + 1)
                onClicked: riding.applyPreset(index)
            }
        }
    }
    Column {
        width: parent.width
        Repeater {
            model: riding
            RowLayout {
                id: row
                required property int index
                required property string name
                required property real share
                required property string shareText
                width: parent.width
                spacing: Look.smallGap
                InkText {
                    text: row.name
                    color: row.share > 0 ? Look.ink : Look.soft
                    Layout.preferredWidth: Math.round(98 * Look.textScale)
                    Accessible.ignored: true
                }
                Slide {
                    objectName: "share" + row.index
                    name: row.name
                    valueText: row.shareText
                    from: 0
                    to: 1
                    stepSize: 0.05
                    value: row.share
                    Layout.fillWidth: true
                    onMoved: riding.setShare(row.index, value)
                    onPressedChanged: if (!pressed) section.session.sealStep()
                    Keys.onPressed: event => event.accepted = riding.pressKey(row.index, event.text)
                }
                InkText {
                    objectName: "shareText" + row.index
                    text: row.shareText
                    horizontalAlignment: Text.AlignRight
                    color: row.share > 0 ? Look.ink : Look.soft
                    wrapMode: Text.NoWrap
                    Layout.preferredWidth: Math.round(46 * Look.textScale)
                    Accessible.ignored: true
                }
            }
        }
    }
    Tick {
        objectName: "traffic"
        text: qsTr("in traffic")
        hint: qsTr("narrower bars count for more; toe room counts double")
        checked: riding.traffic
        onClicked: riding.traffic = checked
        width: parent.width
    }
    Tick {
        objectName: "footRetention"
        text: qsTr("clipless pedals or toe straps")
        checked: riding.footRetention
        onClicked: riding.footRetention = checked
        width: parent.width
    }
    NumberEntry { objectName: "luggageFront"; field: riding.luggageFront; session: section.session; width: parent.width }
    NumberEntry { objectName: "luggageRear"; field: riding.luggageRear; session: section.session; width: parent.width }
    InkText { text: qsTr("feet on the ground, seated"); width: parent.width }
    Choice {
        objectName: "feetDown"
        name: qsTr("feet on the ground, seated")
        options: [
            { text: qsTr("nothing asked"), value: "" },
            { text: qsTr("one toe"), value: "one_toe", hint: qsTr("saddle a little lower") },
            { text: qsTr("toes"), value: "toes", hint: qsTr("saddle lower") },
            { text: qsTr("flat feet"), value: "flat", hint: qsTr("saddle lower") }
        ]
        value: riding.feetDown
        onChosen: value => riding.feetDown = value
        width: parent.width
    }
    InkText { text: qsTr("sold under a safety standard"); width: parent.width }
    Flow {
        spacing: Look.hairGap
        width: parent.width
        Repeater {
            model: [""].concat(riding.standards)
            Chip {
                required property string modelData
                required property int index
                objectName: "standard" + modelData
                text: riding.standardNames[index - 1] ?? qsTr("none")
                checkable: false
                checked: riding.soldUnder === modelData
                onClicked: riding.soldUnder = modelData
            }
        }
    }
}
