// SPDX-License-Identifier: MIT
import QtQuick
import QtQuick.Layouts
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
    Choice {
        objectName: "way"
        name: qsTr("Measured from")
        options: [
            { text: qsTr("From the bracket"), value: false, hint: qsTr("Each contact from the bottom bracket") },
            { text: qsTr("From the saddle"), value: true, hint: qsTr("With plumb line, straightedge and tape") }
        ]
        value: today.bySaddle
        onChosen: value => today.bySaddle = value
        Layout.fillWidth: true
    }
    FieldList {
        objectName: "contacts"
        visible: !today.bySaddle
        session: section.session
        fields: today.contacts
        datumOf: section.datum
        Layout.fillWidth: true
    }
    FieldList {
        objectName: "fromSaddle"
        visible: today.bySaddle
        session: section.session
        fields: today.fromTheSaddle
        datumOf: section.datum
        Layout.fillWidth: true
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
        Layout.fillWidth: true
    }
    InkText {
        objectName: "todayNote"
        visible: today.bySaddle && today.note
        text: today.note
        Layout.fillWidth: true
        Accessible.role: Accessible.AlertMessage
    }
    InkText {
        objectName: "conversion"
        visible: today.bySaddle
        text: today.conversion
        font.pixelSize: Look.small
        color: Look.soft
        Layout.fillWidth: true
    }
    FieldList {
        session: section.session
        fields: today.crank
        datumOf: section.datum
        Layout.fillWidth: true
    }
    Tick {
        objectName: "comfortable"
        text: qsTr("Ridden for long without complaint")
        checked: today.comfortable
        onClicked: {
            today.comfortable = checked
            checked = Qt.binding(() => today.comfortable)
        }
        Layout.fillWidth: true
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
