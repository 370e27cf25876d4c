// SPDX-License-Identifier: MIT
import QtQuick
import QtQuick.Layouts
import Tripoise

// What the bicycle is for.
Fold {
    id: section
    required property Session session
    required property TodayModel today // whose complaints are asked for here

    title: qsTr("Riding")
    summary: riding.summary

    function applyPreset(index: int) { riding.applyPreset(index) }
    function takeShares() {
        open = true
        shares.itemAt(riding.foremost).slide.forceActiveFocus(Qt.TabFocusReason)
    }
    function takeFocus() {
        open = true
        presets.itemAt(Math.max(0, riding.preset)).forceActiveFocus(Qt.TabFocusReason)
    }

    RidingModel { id: riding; session: section.session }

    component Question: Chip {
        id: question
        property bool on
        signal answered(bool on)
        checked: on
        onToggled: {
            const wanted = checked
            checked = Qt.binding(() => question.on)
            answered(wanted)
        }
    }

    Flow {
        spacing: Look.hairGap
        width: parent.width
        Repeater {
            id: presets
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
            id: shares
            model: riding
            RowLayout {
                id: row
                required property int index
                required property string name
                required property real share
                required property string shareText
                readonly property alias slide: slide
                width: parent.width
                spacing: Look.smallGap
                InkText {
                    text: row.name
                    color: row.share > 0 ? Look.ink : Look.soft
                    Layout.preferredWidth: Math.round(110 * Look.textScale)
                    Accessible.ignored: true
                }
                Slide {
                    id: slide
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
    Flow { // what is asked of every rider, in a few words
        spacing: Look.hairGap
        width: parent.width
        Accessible.role: Accessible.Grouping
        Accessible.name: qsTr("About the riding")
        Question {
            objectName: "traffic"
            text: qsTr("in traffic")
            hint: qsTr("narrower bars count for more; toe room counts double")
            on: riding.traffic
            onAnswered: on => riding.traffic = on
        }
        Question {
            objectName: "footRetention"
            text: qsTr("clipless or straps")
            on: riding.footRetention
            onAnswered: on => riding.footRetention = on
        }
        Question {
            objectName: "bendsBadly"
            text: qsTr("belly or thighs in the way")
            hint: qsTr("the hands come up and a shorter crank is tried")
            on: !riding.bendsFreely
            onAnswered: on => riding.bendsFreely = !on
        }
        Question {
            objectName: "luggage"
            text: qsTr("luggage")
            on: luggage.visible
            onAnswered: on => {
                luggage.asked = on
                if (on)
                    front.input.forceActiveFocus(Qt.TabFocusReason)
                else
                    riding.leaveLuggage()
            }
        }
        Question {
            objectName: "feetAsked"
            text: qsTr("feet on the ground")
            on: feet.visible
            onAnswered: on => {
                feet.asked = on
                if (!on)
                    riding.feetDown = ""
            }
        }
        Question {
            objectName: "bothered"
            text: qsTr("something hurts")
            on: complaints.visible
            onAnswered: on => {
                complaints.asked = on
                if (!on)
                    section.today.clearComplaints()
            }
        }
    }
    Column {
        id: luggage
        property bool asked: false
        visible: asked || riding.hasLuggage
        spacing: Look.hairGap
        width: parent.width
        NumberEntry { id: front; objectName: "luggageFront"; field: riding.luggageFront; session: section.session; width: parent.width }
        NumberEntry { objectName: "luggageRear"; field: riding.luggageRear; session: section.session; width: parent.width }
    }
    Choice {
        id: feet
        property bool asked: false
        objectName: "feetDown"
        visible: asked || riding.feetDown
        name: qsTr("feet on the ground, seated")
        options: [
            { text: qsTr("one toe"), value: "one_toe", hint: qsTr("saddle a little lower") },
            { text: qsTr("toes"), value: "toes", hint: qsTr("saddle lower") },
            { text: qsTr("flat feet"), value: "flat", hint: qsTr("saddle lower") }
        ]
        value: riding.feetDown
        onChosen: value => riding.feetDown = value
        width: parent.width
    }
    Flow {
        id: complaints
        property bool asked: false
        objectName: "complaints"
        visible: asked || section.today.anyComplaint
        spacing: Look.hairGap
        width: parent.width
        Accessible.role: Accessible.Grouping
        Accessible.name: qsTr("what bothers")
        Repeater {
            model: section.today.complaints.length // chips that stay keep the keys
            Question {
                required property int index
                readonly property var complaint: section.today.complaints[index]
                objectName: "complaint_" + complaint.value
                text: complaint.text
                on: complaint.on
                onAnswered: section.today.toggleComplaint(complaint.value)
            }
        }
    }
    InkText {
        visible: complaints.visible && text
        text: section.today.otherComplaints
        font.pixelSize: Look.small
        color: Look.soft
        width: parent.width
    }
    Connections {
        target: section.session
        function onStarted() { luggage.asked = feet.asked = complaints.asked = false }
    }
}
