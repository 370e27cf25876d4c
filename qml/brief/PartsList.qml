// SPDX-License-Identifier: MIT
import QtQuick
import QtQuick.Layouts
import Tripoise

// One list of the box: what is ticked may be used. O ticks a part alone, F2 changes it, Delete takes it
// out for good.
Leaf {
    id: list
    required property PartsModel parts
    required property Session session
    property string addText
    property bool bars: false
    property bool stems: false

    summary: qsTr("%1 of %2").arg(parts.tickedCount).arg(parts.count)

    function focusRow(at: int) {
        const row = rows.itemAt(Math.max(0, Math.min(at, parts.count - 1)))
        if (row)
            row.takeFocus()
        else
            addButton.forceActiveFocus(Qt.TabFocusReason)
    }

    Repeater {
        id: rows
        model: list.parts
        Column {
            id: row
            required property int index
            required property string text
            required property string clamps
            required property string note
            required property bool ticked
            readonly property bool narrow: width < 210 * Look.textScale
            readonly property bool onBench: list.parts.benchRow === index
            objectName: "part_" + index
            spacing: 0
            width: parent.width

            function takeFocus() { tick.forceActiveFocus(Qt.TabFocusReason) }
            function edit() {
                list.parts.edit(index)
                if (bench.item)
                    bench.item.takeFocus()
            }
            function remove() {
                const at = index
                list.parts.remove(at)
                list.focusRow(at)
            }

            RowLayout {
                spacing: Look.hairGap
                width: row.width
                HoverHandler { id: pointer }
                Tick {
                    id: tick
                    objectName: "tick"
                    text: row.narrow && row.clamps ? row.text + "  " + row.clamps : row.text
                    checked: row.ticked
                    Accessible.name: row.clamps ? row.text + ", " + row.clamps : row.text
                    Accessible.description: row.note
                    Layout.fillWidth: true
                    onClicked: {
                        list.parts.setTicked(row.index, checked)
                        checked = Qt.binding(() => row.ticked)
                    }
                    Keys.onPressed: event => {
                        if (event.key === Qt.Key_F2)
                            row.edit()
                        else if (event.key === Qt.Key_Delete)
                            row.remove()
                        else if (event.key === Qt.Key_O && event.modifiers === Qt.NoModifier)
                            list.parts.setOnly(row.index)
                        else if (event.key === Qt.Key_Up && row.index > 0)
                            list.focusRow(row.index - 1)
                        else if (event.key === Qt.Key_Down && row.index + 1 < list.parts.count)
                            list.focusRow(row.index + 1)
                        else
                            return
                        event.accepted = true
                    }
                }
                InkText {
                    visible: row.clamps && !row.narrow && !only.visible
                    text: row.clamps
                    font.pixelSize: Look.small
                    color: Look.soft
                    wrapMode: Text.NoWrap
                    Accessible.ignored: true
                }
                InkButton {
                    id: only
                    objectName: "only"
                    visible: list.parts.count > 1 && (pointer.hovered || tick.activeFocus)
                    bare: true
                    text: qsTr("only")
                    font.pixelSize: Look.small
                    hint: qsTr("This one alone, and all again (O)")
                    focusPolicy: Qt.NoFocus
                    implicitHeight: Math.round(Look.control * 0.86)
                    leftPadding: Look.hairGap
                    Accessible.name: qsTr("%1 alone").arg(row.text)
                    onClicked: list.parts.setOnly(row.index)
                }
                InkButton {
                    objectName: "edit"
                    bare: true
                    iconName: "edit"
                    hint: qsTr("Change (F2)")
                    focusPolicy: Qt.NoFocus // by its key, so that a list is not three stops a part
                    implicitHeight: Math.round(Look.control * 0.86)
                    Accessible.name: qsTr("Change %1").arg(row.text)
                    onClicked: row.edit()
                }
                InkButton {
                    objectName: "remove"
                    bare: true
                    iconName: "remove"
                    hint: qsTr("Out of the shop's box (Delete)")
                    focusPolicy: Qt.NoFocus
                    implicitHeight: Math.round(Look.control * 0.86)
                    Accessible.name: qsTr("Remove %1").arg(row.text)
                    onClicked: row.remove()
                }
            }
            InkText {
                objectName: "note"
                visible: row.note
                text: row.note
                font.pixelSize: Look.small
                font.italic: true
                color: Look.soft
                width: row.width
                leftPadding: Math.round(Look.body * 1.15) + Look.smallGap
                Accessible.ignored: true
            }
            Loader {
                id: bench
                active: row.onBench
                visible: active
                width: row.width
                sourceComponent: PartBench {
                    parts: list.parts
                    session: list.session
                    bars: list.bars
                    stems: list.stems
                    onClosed: row.takeFocus()
                }
            }
        }
    }
    InkText {
        visible: list.parts.count === 0
        text: qsTr("None yet")
        font.italic: true
        color: Look.soft
        width: parent.width
    }
    Flow {
        visible: list.parts.removedText
        spacing: Look.smallGap
        width: parent.width
        InkText {
            text: qsTr("%1 is out of the box.").arg(list.parts.removedText)
            font.pixelSize: Look.small
            color: Look.soft
            width: Math.min(implicitWidth, list.width - Look.gap)
        }
        InkButton {
            objectName: "putBack"
            bare: true
            iconName: "undo"
            text: qsTr("Put back")
            onClicked: list.parts.putBack()
        }
    }
    InkButton {
        id: addButton
        objectName: "add"
        visible: !list.parts.adding
        bare: true
        iconName: "add"
        text: list.addText
        onClicked: {
            list.parts.add()
            if (newPart.item)
                newPart.item.takeFocus()
        }
    }
    Loader {
        id: newPart
        active: list.parts.adding
        visible: active
        width: parent.width
        sourceComponent: PartBench {
            objectName: "newPart"
            parts: list.parts
            session: list.session
            bars: list.bars
            stems: list.stems
            onClosed: addButton.forceActiveFocus(Qt.TabFocusReason)
        }
    }
}
