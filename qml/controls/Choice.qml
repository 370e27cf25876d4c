// SPDX-License-Identifier: MIT
import QtQuick
import Tripoise

// One of a few, side by side, on more lines where they must; left and right move along.
Flow {
    id: choice
    property var options: [] // of { text, value, hint, spoken }; the last two may be left out
    property var value
    property string name // for those who do not see it
    property bool inTabOrder: true
    signal chosen(var value)

    spacing: -1
    Accessible.role: Accessible.Grouping
    Accessible.name: name

    Repeater {
        id: repeater
        model: choice.options
        RadioChip {
            required property var modelData
            required property int index
            readonly property bool current: modelData.value === choice.value
            objectName: "option_" + modelData.value
            text: modelData.text
            hint: modelData.hint ?? ""
            checked: current
            focusPolicy: Qt.StrongFocus
            activeFocusOnTab: choice.inTabOrder && (current || activeFocus || (index === 0 && !choice.options.some(o => o.value === choice.value)))
            Accessible.name: (choice.name ? choice.name + ": " : "") + (modelData.spoken ?? text)
            onClicked: choice.chosen(modelData.value)
            Keys.onLeftPressed: choice.move(index - 1)
            Keys.onRightPressed: choice.move(index + 1)
        }
    }

    function move(to: int) {
        const item = repeater.itemAt(to)
        if (item) {
            item.forceActiveFocus(Qt.TabFocusReason)
            choice.chosen(item.modelData.value)
        }
    }
}
