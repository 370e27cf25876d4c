// SPDX-License-Identifier: MIT
import QtQuick
import Tripoise

// Who rides, and what the tape says.
Fold {
    id: section
    required property Session session
    signal measuring(string quantity, string name, string datum, string howTo, Item beside)
    signal measured()
    signal allMeasured() // Return in the last of them
    readonly property alias nameField: nameLine
    readonly property Item firstField: rows.count > 0 && rows.itemAt(0) ? rows.itemAt(0).input : null

    title: qsTr("Rider")
    summary: rider.label ? rider.label + " · " + rider.summary : rider.summary

    RiderModel { id: rider; session: section.session }
    MeasurementsModel { id: measurements; session: section.session }

    TextEntry {
        id: nameLine
        objectName: "riderLabel"
        name: qsTr("name of the rider")
        placeholderText: name
        text: rider.label
        maximumLength: 200
        width: parent.width
        onTextEdited: rider.label = text
        onAccepted: section.firstField.forceActiveFocus(Qt.TabFocusReason)
        onEditingFinished: section.session.sealStep()
        onUndoAsked: section.session.undo()
        onRedoAsked: section.session.redo()
    }
    Choice {
        objectName: "sex"
        width: parent.width
        name: qsTr("body statistics of")
        options: [
            { text: qsTr("women"), value: "female", hint: qsTr("what was not measured is inferred from women's bodies") },
            { text: qsTr("men"), value: "male", hint: qsTr("what was not measured is inferred from men's bodies") },
            { text: qsTr("both"), value: "", hint: qsTr("not stated: inferred from both at equal weight, with more uncertainty") }
        ]
        value: rider.sex
        onChosen: value => rider.sex = value
    }
    InkText {
        visible: measurements.missing
        text: measurements.missing
        color: Look.soft
        font.italic: true
        width: parent.width
    }
    Column {
        spacing: Look.smallGap
        width: parent.width
        Repeater {
            id: rows
            model: measurements
            NumberEntry {
                id: row
                required property int index
                required property string certainty
                required property string datum
                required property string howTo
                required property string quantity
                readonly property bool last: index === rows.count - 1
                objectName: quantity
                session: section.session
                under: true
                fieldWidth: Math.round((field.inFeet ? (certainty === "twice" ? 190 : 116) : 106) * Look.textScale)
                width: parent ? parent.width : 0
                goesOn: !last
                onTypingChanged: typing ? section.measuring(quantity, field.label, datum, howTo, row) : section.measured()
                Connections {
                    target: row.input
                    function onAccepted() {
                        if (row.last)
                            section.allMeasured()
                    }
                }
                keyed: text => measurements.pressKey(index, text)
                Choice {
                    objectName: "certainty"
                    visible: row.field.hasValue
                    inTabOrder: false // by "?" and ";" in the number, so that Tab goes to the next
                    name: qsTr("how %1 was taken").arg(row.field.label)
                    options: [
                        { text: qsTr("once"), value: "once" },
                        { text: qsTr("twice"), value: "twice", hint: qsTr("the second behind a semicolon: 842; 846") },
                        { text: qsTr("guess"), value: "guess", hint: qsTr("by a question mark behind the number") }
                    ]
                    value: row.certainty
                    onChosen: value => {
                        if (value !== "twice")
                            measurements.setCertainty(row.index, value)
                        row.input.forceActiveFocus(Qt.TabFocusReason)
                        if (value === "twice" && row.certainty !== "twice")
                            row.input.insert(row.input.length, "; ")
                    }
                }
            }
        }
    }
    Chip {
        objectName: "moreMeasurements"
        text: measurements.all ? qsTr("fewer measurements") : qsTr("more measurements")
        checked: measurements.all
        checkable: false
        onClicked: measurements.all = !measurements.all
    }
    Leaf {
        objectName: "moreOfTheRider"
        title: qsTr("Back, heel, shoes, notes")
        width: parent.width

        InkText { text: qsTr("suppleness of the back"); width: parent.width }
        Choice {
            objectName: "flexibility"
            width: parent.width
            name: qsTr("suppleness of the back")
            options: [
                { text: qsTr("stiff"), value: "stiff", hint: qsTr("a straight leg rises less than 60°, lying on the back") },
                { text: qsTr("ordinary"), value: "ordinary", hint: qsTr("60° to 80°") },
                { text: qsTr("supple"), value: "supple", hint: qsTr("more than 80°") }
            ]
            value: rider.flexibility
            onChosen: value => rider.flexibility = value
        }
        InkText { text: qsTr("heel at the lowest pedal"); width: parent.width }
        Choice {
            objectName: "heelHabit"
            width: parent.width
            name: qsTr("heel at the lowest pedal")
            options: [
                { text: qsTr("low"), value: "low" },
                { text: qsTr("ordinary"), value: "level" },
                { text: qsTr("toe down"), value: "toe_down" }
            ]
            value: rider.heelHabit
            onChosen: value => rider.heelHabit = value
        }
        NumberEntry { objectName: "sole"; field: rider.sole; session: section.session; width: parent.width }
        NumberEntry { objectName: "shoeLength"; field: rider.shoeLength; session: section.session; width: parent.width }
        TextEntry {
            objectName: "notes"
            name: qsTr("notes")
            placeholderText: name
            text: rider.notes
            width: parent.width
            onTextEdited: rider.notes = text
            onEditingFinished: section.session.sealStep()
            onUndoAsked: section.session.undo()
            onRedoAsked: section.session.redo()
        }
    }
}
