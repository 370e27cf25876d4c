// SPDX-License-Identifier: MIT
import QtQuick
import Tripoise

// The bicycle ridden today.
Fold {
    id: section
    required property Session session
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
                    { text: qsTr("From the bracket"), value: false, hint: qsTr("Each contact from the bottom bracket") },
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
                width: parent.width
            }
            Choice {
                objectName: "barKind"
                visible: today.bySaddle
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
                fields: today.crank
                datumOf: section.datum
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
