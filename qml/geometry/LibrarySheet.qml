// SPDX-License-Identifier: MIT
import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Tripoise

// The frames that the shop keeps, each with its sizes to tick.
Sheet {
    id: sheet
    objectName: "librarySheet"
    required property Session session
    signal tableAsked()
    closePolicy: T.Popup.CloseOnEscape | T.Popup.CloseOnPressOutside

    function show() {
        frames.refresh()
        open()
    }
    function addTicked() {
        if (frames.add())
            close()
    }
    onOpened: {
        const first = kept.count > 0 ? kept.itemAt(0).whole : away
        first.forceActiveFocus(Qt.TabFocusReason)
    }

    LibraryModel {
        id: frames
        session: sheet.session
    }

    contentItem: ColumnLayout {
        spacing: Look.gap
        InkText {
            text: qsTr("Frames kept")
            font.pixelSize: Look.title
        }
        InkText {
            visible: frames.count === 0
            text: qsTr("None yet. A frame is kept when its geometry table is read.")
            color: Look.soft
            Layout.fillWidth: true
        }
        Scroll {
            Layout.preferredWidth: Math.min(sheet.parent ? sheet.parent.width - 120 : 0, 620 * Look.textScale)
            Layout.preferredHeight: Math.min(models.height, sheet.parent ? sheet.parent.height - 220 : 0)
            contentHeight: models.height
            Column {
                id: models
                width: parent.width - Look.gap
                spacing: Look.smallGap
                Repeater {
                    id: kept
                    model: frames
                    Column {
                        id: model
                        required property int index
                        required property string model
                        required property var sizes
                        readonly property alias whole: whole
                        width: models.width
                        spacing: Look.hairGap
                        RowLayout {
                            width: parent.width
                            spacing: Look.smallGap
                            InkText {
                                objectName: "kept_" + model.index
                                text: model.model
                                font.bold: true
                                Layout.fillWidth: true
                            }
                            InkButton {
                                id: whole
                                objectName: "whole_" + model.index
                                text: qsTr("Add all sizes")
                                Accessible.name: qsTr("Add all sizes of %1").arg(model.model)
                                onClicked: {
                                    for (let size = 0; size < model.sizes.length; ++size)
                                        frames.tick(model.index, size, true)
                                    sheet.addTicked()
                                }
                            }
                            InkButton {
                                objectName: "forget_" + model.index
                                iconName: "remove"
                                bare: true
                                hint: qsTr("Keep %1 no longer").arg(model.model)
                                onClicked: {
                                    away.forceActiveFocus(Qt.TabFocusReason) // before its row is gone
                                    frames.forget(model.index)
                                }
                            }
                        }
                        Flow {
                            width: parent.width
                            spacing: Look.gap
                            Repeater {
                                model: model.sizes.length // ticks that stay keep the keys
                                Tick {
                                    required property int index
                                    readonly property var size: model.sizes[index] ?? {}
                                    objectName: "keptSize_" + model.index + "_" + index
                                    text: size.name ?? ""
                                    hint: size.figures ?? ""
                                    checked: size.ticked ?? false
                                    onClicked: frames.tick(model.index, index, checked)
                                }
                            }
                        }
                        Hairline { width: parent.width }
                    }
                }
            }
        }
        InkText {
            visible: frames.said
            text: frames.said
            color: Look.hazardText
            Layout.fillWidth: true
            Accessible.role: Accessible.AlertMessage
        }
        Flow {
            spacing: Look.smallGap
            Layout.fillWidth: true
            InkButton {
                objectName: "libraryAdd"
                strong: true
                enabled: frames.ticked > 0
                text: frames.addText
                onClicked: sheet.addTicked()
            }
            InkButton {
                objectName: "libraryTable"
                text: qsTr("From a table…")
                onClicked: {
                    sheet.close()
                    sheet.tableAsked()
                }
            }
            InkButton {
                id: away
                objectName: "libraryAway"
                text: qsTr("Put away")
                onClicked: sheet.close()
            }
        }
    }
}
