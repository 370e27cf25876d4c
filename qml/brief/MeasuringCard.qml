// SPDX-License-Identifier: MIT
import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Tripoise

// How to take a measurement, beside the field and never over it.
T.Popup {
    id: card
    property string quantity
    property string name
    property string datum
    property string howTo
    property Item beside
    property real available
    property real room // that it may take
    readonly property int wordsWidth: Math.min(Math.round(210 * Look.textScale), room - figure.implicitWidth - 3 * padding)

    function show(quantity: string, name: string, datum: string, howTo: string, beside: Item) {
        card.quantity = quantity
        card.name = name
        card.datum = datum
        card.howTo = howTo
        card.beside = beside
        const aside = parent.Window.width - parent.mapToItem(null, parent.width + Look.hairGap, 0).x - Look.gap
        room = aside > 0 ? aside : parent.width - 2 * Look.gap // a column alone: over its far end
        const top = beside.mapToItem(parent, 0, 0).y
        y = Math.max(Look.gap, Math.min(top, available - implicitHeight - Look.gap))
        open()
    }
    function hide() { close() }
    function shows(quantity: string): bool { return figure.shows(quantity) }

    closePolicy: T.Popup.NoAutoClose
    focus: false
    padding: Look.gap
    implicitWidth: contentItem.implicitWidth + 2 * padding
    implicitHeight: contentItem.implicitHeight + 2 * padding
    contentItem: RowLayout {
        spacing: Look.gap
        MeasuringFigure {
            id: figure
            quantity: card.quantity
            night: Look.night
            readonly property bool wide: shows(quantity) // a bicycle
            implicitWidth: Math.round((wide ? 210 : 110) * Look.textScale)
            implicitHeight: Math.round((wide ? 155 : 170) * Look.textScale)
        }
        ColumnLayout {
            spacing: Look.hairGap
            Layout.alignment: Qt.AlignTop
            InkText {
                text: card.name
                font.bold: true
                Layout.preferredWidth: card.wordsWidth
            }
            InkText {
                text: card.datum
                Layout.preferredWidth: card.wordsWidth
            }
            InkText {
                visible: text
                text: card.howTo
                font.pixelSize: Look.small
                color: Look.soft
                Layout.preferredWidth: card.wordsWidth
            }
        }
    }
    background: Rectangle {
        color: Look.sheet
        radius: Look.radius
        border.width: 1
        border.color: Look.ink
    }
}
