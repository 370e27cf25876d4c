// SPDX-License-Identifier: MIT
import QtQuick
import Tripoise

// Sentences under a heading that say what they mean, as the lines of a table do.
MeantRow {
    id: row
    required property var section

    visible: section.items.length > 0
    meaning: section.meaning
    spoken: section.heading
    implicitHeight: list.implicitHeight
    Accessible.role: Accessible.Grouping

    ToldList {
        id: list
        width: row.width
        heading: row.section.heading
        items: row.section.items
    }
}
