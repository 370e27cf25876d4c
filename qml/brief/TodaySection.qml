// SPDX-License-Identifier: MIT
import QtQuick
import Tripoise

// The bicycle ridden today.
Fold {
    id: section
    required property Session session
    property var pictured: null // whether a place has a picture of how it is measured
    signal measuring(string quantity, string name, string datum, string howTo, Item beside)
    signal measured()
    readonly property alias today: today
    readonly property var datum: (field, label) => today.datumOf(field)

    title: qsTr("Ridden today")
    summary: today.summary

    TodayModel {
        id: today
        session: section.session
    }
    Later {
        wanted: section.open
        width: section.width // a layout gives none to what has no height yet
        Column {
            spacing: Look.smallGap
            Choice {
                objectName: "way"
                name: qsTr("Measured from")
                options: [
                    { text: qsTr("From the bottom bracket"), value: false, hint: qsTr("Each contact from the bottom bracket") },
                    { text: qsTr("From the saddle"), value: true, hint: qsTr("With plumb line, straightedge and tape") }
                ]
                value: today.bySaddle
                onChosen: value => today.bySaddle = value
                width: parent.width
            }
            FieldList {
                objectName: "contacts"
                session: section.session
                fields: today.bySaddle ? today.fromTheSaddle : today.contacts
                datumOf: section.datum
                pictured: key => section.pictured(key)
                onMeasuring: (key, name, datum, beside) => section.measuring(key, name, datum, "", beside)
                onMeasured: section.measured()
                width: parent.width
            }
            Choice {
                objectName: "barKind"
                name: qsTr("Its bar")
                options: [
                    { text: qsTr("Flat bar"), value: "flat" },
                    { text: qsTr("Swept"), value: "swept" },
                    { text: qsTr("Drop"), value: "drop" }
                ]
                value: today.barKind
                onChosen: value => today.barKind = value
                width: parent.width
            }
            InkText {
                objectName: "todayNote"
                visible: today.bySaddle && today.note
                text: today.note
                width: parent.width
                Accessible.role: Accessible.AlertMessage
            }
            InkText {
                objectName: "conversion"
                visible: today.bySaddle
                text: today.conversion
                font.pixelSize: Look.small
                color: Look.soft
                width: parent.width
            }
            FieldList {
                session: section.session
                fields: today.ownParts
                datumOf: section.datum
                width: parent.width
            }
            InkText { text: qsTr("its riding"); width: parent.width }
            Choice {
                objectName: "use"
                name: qsTr("its riding")
                options: today.uses
                value: today.use
                onChosen: value => today.use = value
                width: parent.width
            }
            InkText { text: qsTr("for how long"); width: parent.width }
            Choice {
                objectName: "ridden"
                name: qsTr("for how long")
                options: [
                    { text: qsTr("weeks"), value: "weeks" },
                    { text: qsTr("a season"), value: "season" },
                    { text: qsTr("years"), value: "years" }
                ]
                value: today.ridden
                onChosen: value => today.ridden = value
                width: parent.width
            }
            Tick {
                objectName: "comfortable"
                text: qsTr("Ridden for long without complaint")
                checked: today.comfortable
                onClicked: {
                    today.comfortable = checked
                    checked = Qt.binding(() => today.comfortable)
                }
                width: parent.width
            }
            InkText { text: qsTr("this position"); width: parent.width }
            Choice {
                objectName: "position"
                name: qsTr("this position")
                options: [
                    { text: qsTr("keep"), value: "keep", hint: qsTr("the new bicycle gets it, as far as parts allow") },
                    { text: qsTr("advise"), value: "advise", hint: qsTr("it counts beside the body measures") },
                    { text: qsTr("if liked"), value: "", hint: qsTr("kept where it is comfortable and the riding alike") }
                ]
                value: today.position
                onChosen: value => today.position = value
                width: parent.width
            }
            InkButton {
                objectName: "clearToday"
                visible: today.known
                bare: true
                iconName: "remove"
                text: qsTr("Clear")
                hint: qsTr("As if nothing had been measured")
                onClicked: today.clear()
            }
        }
    }
}
