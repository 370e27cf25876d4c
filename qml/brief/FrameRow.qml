// SPDX-License-Identifier: MIT
import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Tripoise

// One size: a line of a table, and under it what can be typed about it.
Column {
    id: row
    required property FrameFields fields
    required property Session session
    property bool open: false
    signal copyAsked()
    signal removeAsked()
    readonly property var datum: (field, label) => row.fields.datumOf(field)
    spacing: Look.hairGap

    function takeFocus() { heading.forceActiveFocus(Qt.TabFocusReason) }
    function nameIt() {
        open = true
        details.item.sizeInput.forceActiveFocus(Qt.TabFocusReason)
    }

    T.AbstractButton {
        id: heading
        objectName: "heading"
        width: row.width
        implicitHeight: Math.max(Look.control, words.implicitHeight + Look.hairGap)
        focusPolicy: Qt.StrongFocus
        Accessible.role: Accessible.Button
        Accessible.name: row.fields.title + ", " + row.fields.figures
        Accessible.description: (row.open ? qsTr("open") : qsTr("folded")) + (row.fields.note ? ". " + row.fields.note : "")
        Accessible.onPressAction: Presser.press(heading)
        onClicked: row.open = !row.open
        Keys.onReturnPressed: Presser.press(heading)
        Keys.onEnterPressed: Presser.press(heading)
        Keys.onLeftPressed: row.open = false
        Keys.onRightPressed: row.open = true
        Keys.onDeletePressed: row.removeAsked()

        contentItem: RowLayout {
            spacing: Look.hairGap
            Icon {
                name: "fold"
                color: Look.soft
                rotation: row.open ? 90 : 0
                Layout.preferredWidth: Look.small
                Layout.preferredHeight: Look.small
            }
            GridLayout {
                id: words
                columns: name.implicitWidth + figures.implicitWidth + Look.gap < row.width - Look.gap - Look.small ? 2 : 1
                columnSpacing: Look.smallGap
                rowSpacing: 0
                InkText {
                    id: name
                    text: row.fields.title
                    font.italic: !row.fields.entered
                    Layout.fillWidth: true
                    Accessible.ignored: true
                }
                InkText {
                    id: figures
                    text: row.fields.figures
                    font.pixelSize: Look.small
                    color: Look.soft
                    wrapMode: Text.NoWrap
                    Accessible.ignored: true
                }
            }
        }
        background: Rectangle {
            color: heading.hovered ? Look.tint : "transparent"
            FocusRing { target: heading; anchors.margins: 0 }
        }
    }
    InkText {
        objectName: "note"
        visible: row.fields.note
        text: row.fields.note
        font.pixelSize: Look.small
        color: row.fields.entered ? Look.hazardText : Look.soft
        width: row.width
        leftPadding: Look.gap
    }

    Later {
        id: details
        wanted: row.open
        width: row.width
        Item {
            readonly property alias sizeInput: sizeEntry.input
            implicitHeight: form.height + Look.smallGap
            Column {
                id: form
                x: Look.gap
                width: parent.width - x
                spacing: Look.hairGap

                Grid {
                    id: names
                    readonly property bool wide: width > 200 * Look.textScale
                    columns: wide ? 2 : 1
                    columnSpacing: Look.smallGap
                    rowSpacing: Look.hairGap
                    width: parent.width
                    NameEntry {
                        objectName: "model"
                        session: row.session
                        label: qsTr("Model")
                        value: row.fields.model
                        onNamed: name => row.fields.setModel(name)
                        width: names.wide ? names.width - sizeEntry.width - Look.smallGap : names.width
                    }
                    NameEntry {
                        id: sizeEntry
                        objectName: "size"
                        session: row.session
                        label: qsTr("Size")
                        value: row.fields.size
                        message: row.fields.sizeMessage
                        onNamed: name => row.fields.setSize(name)
                        width: names.wide ? Math.round(names.width / 3) : names.width
                    }
                }
                FieldList {
                    session: row.session
                    fields: row.fields.first
                    datumOf: row.datum
                    width: parent.width
                }
                Leaf {
                    objectName: "rest"
                    title: qsTr("The rest of the table")
                    width: parent.width
                    FieldList {
                        session: row.session
                        fields: row.fields.rest
                        datumOf: row.datum
                        width: parent.width
                    }
                }
                Leaf {
                    objectName: "wheel"
                    title: qsTr("Wheels")
                    width: parent.width
                    FieldList {
                        session: row.session
                        fields: row.fields.wheel
                        datumOf: row.datum
                        width: parent.width
                    }
                }
                Leaf {
                    objectName: "headset"
                    title: qsTr("Headset and steerer")
                    width: parent.width
                    FieldList {
                        session: row.session
                        fields: row.fields.headset
                        datumOf: row.datum
                        width: parent.width
                    }
                    Choice {
                        objectName: "material"
                        name: qsTr("Steerer made of")
                        options: [
                            { text: qsTr("Steel"), value: "steel" },
                            { text: qsTr("Aluminium"), value: "aluminium" },
                            { text: qsTr("Carbon"), value: "carbon" }
                        ]
                        value: row.fields.material
                        onChosen: value => row.fields.setMaterial(value)
                        width: parent.width
                    }
                }
                Leaf {
                    objectName: "post"
                    title: qsTr("Seat post")
                    width: parent.width
                    FieldList {
                        session: row.session
                        fields: row.fields.post
                        datumOf: row.datum
                        width: parent.width
                    }
                }
                Leaf {
                    objectName: "sold"
                    title: qsTr("Sold with")
                    width: parent.width
                    FieldList {
                        session: row.session
                        fields: row.fields.sold
                        datumOf: row.datum
                        width: parent.width
                    }
                }
                Leaf {
                    objectName: "weights"
                    title: qsTr("Weights and price")
                    width: parent.width
                    FieldList {
                        session: row.session
                        fields: row.fields.weights
                        datumOf: row.datum
                        width: parent.width
                    }
                }
                InkText {
                    text: qsTr("≈ follows from the other figures. ? is what is usual, until it is given.")
                    font.pixelSize: Look.small
                    color: Look.soft
                    width: parent.width
                }
                Flow {
                    spacing: Look.hairGap
                    width: parent.width
                    InkButton {
                        objectName: "copy"
                        iconName: "copy"
                        text: qsTr("Same again")
                        hint: qsTr("Another size with these figures")
                        onClicked: row.copyAsked()
                    }
                    InkButton {
                        objectName: "remove"
                        iconName: "remove"
                        text: qsTr("Remove")
                        hint: qsTr("Delete, on the size's line")
                        onClicked: row.removeAsked()
                    }
                }
            }
        }
    }
    Hairline { width: row.width }
}
