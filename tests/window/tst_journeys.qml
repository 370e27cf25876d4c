// SPDX-License-Identifier: MIT
import QtQuick
import QtTest
import Tripoise

TestCase {
    id: journeys
    name: "Journeys"
    when: windowShown

    property var win: null

    Component {
        id: mainWindow
        Main {}
    }

    function init() {
        win = createTemporaryObject(mainWindow, null)
        verify(win, "Main.qml loads")
        win.requestActivate()
        tryCompare(win, "active", true)
        waitForRendering(win.contentItem)
        settle()
    }

    // -- what the tests do, as a builder would

    function find(name, from) {
        const item = findChild(from ?? win, name)
        verify(item, name + " exists")
        return item
    }
    function settle() {
        tryCompare(win.session, "settled", true)
        waitForRendering(win.contentItem)
    }
    function reveal(item) {
        item.forceActiveFocus(Qt.TabFocusReason)
        waitForRendering(win.contentItem)
    }
    function click(item) {
        reveal(item)
        mouseClick(item, item.width / 2, item.height / 2)
        waitForRendering(win.contentItem)
    }
    function typeInto(input, text) {
        reveal(input)
        input.selectAll()
        keyClick(Qt.Key_Delete)
        for (const letter of text)
            keyClick(letter)
    }
    function measure(quantity, text) {
        const input = find("input", find(quantity, find("brief")))
        typeInto(input, text)
        keyClick(Qt.Key_Tab)
        return input
    }
    function verdict() {
        return find("decision").decision
    }
    function holdsTheTruth() {
        settle()
        const told = truth.decide(win.session)
        verify(told.size, "the model decides")
        compare(verdict().state, DecisionModel.Decided)
        compare(verdict().sentence, told.sentence)
        compare(win.session.shownFrame, told.frame)
        return told
    }
    function addSize(index, values) {
        click(find("addFrame"))
        const row = find("frame_" + index, find("brief"))
        typeInto(find("input", find("size", row)), values.size)
        keyClick(Qt.Key_Tab)
        for (const key of ["stack", "reach", "head_angle", "seat_angle"]) {
            typeInto(find("input", find("field_" + key, row)), values[key])
            keyClick(Qt.Key_Tab)
        }
    }

    // -- the visits

    function test_1_two_sizes() {
        compare(verdict().state, DecisionModel.Lacking)
        addSize(0, { size: "M", stack: "585", reach: "396", head_angle: "71.5", seat_angle: "73.5" })
        addSize(1, { size: "L", stack: "61O", reach: "408", head_angle: "72", seat_angle: "73" })
        // The O for a zero: said beside the field, and nothing else is lost.
        compare(truth.frames(win.session), 1)
        const stack = find("field_stack", find("frame_1", find("brief")))
        verify(find("message", stack).visible)
        compare(find("input", stack).text, "61O")
        typeInto(find("input", stack), "610")
        keyClick(Qt.Key_Tab)
        compare(truth.frames(win.session), 2)

        measure("stature_mm", "179")
        measure("inseam_mm", "85 cm")
        compare(truth.readings(win.session, "stature_mm"), [1790])
        compare(truth.readings(win.session, "inseam_mm"), [850])
        holdsTheTruth()

        // The mix by a preset's key, then by a slider: the shares stay linked.
        keyClick(Qt.Key_3, Qt.ControlModifier)
        compare(truth.shares(win.session)[2], 1)
        const fast = holdsTheTruth()
        const touring = find("share3", find("brief"))
        reveal(touring)
        keyClick(Qt.Key_7)
        fuzzyCompare(truth.shares(win.session)[3], 0.7, 1e-9)
        fuzzyCompare(truth.shares(win.session).reduce((a, b) => a + b), 1, 1e-12)
        holdsTheTruth()

        // And back: every edit can be undone.
        keyClick(Qt.Key_Z, Qt.ControlModifier)
        compare(holdsTheTruth().sentence, fast.sentence)
    }

    function test_2_one_frame_two_bikes() {
        verify(win.documents.open(demoFolder + "one-frame-two-bikes.json"))
        const told = holdsTheTruth()
        verify(told.stemsByUse.length >= 2, "two uses")
        const fold = find("foldUses", find("decision"))
        if (!fold.open)
            click(find("heading", fold))
        const uses = find("uses", fold)
        verify(uses.visible)
        verify(find("hand", uses).text.length > 0)

        // A slip while typing: the fitting stays as it was, and the text stays to be mended.
        const before = truth.readings(win.session, "inseam_mm")
        const input = measure("inseam_mm", "8500")
        compare(truth.readings(win.session, "inseam_mm"), before)
        compare(input.text, "8500")
        reveal(input)
        keyClick(Qt.Key_Escape)
        holdsTheTruth()

        // The bar pulled 10 mm nearer by the keys; what comes of it can be read; and back.
        const drawing = find("drawing")
        reveal(drawing) // the first handle has the keys
        for (let i = 0; i < 10; ++i)
            keyClick(Qt.Key_Left)
        const trial = truth.trial(win.session)
        verify(trial.reach, "a set-up is being tried")
        for (const size of [[1024, 700], [1280, 800], [1920, 1080]]) {
            win.width = size[0]
            win.height = size[1]
            waitForRendering(win.contentItem)
            const told = find("pullTold")
            verify(told.visible && told.width > 20 * Look.small, "room for a line of it at " + size)
            verify(told.height > 2 * Look.small, "and for more than one")
            verify(!find("pulledText").truncated && find("pulledText").width > 10 * Look.small)
        }
        click(find("backToAdvised"))
        compare(truth.trial(win.session).reach, undefined)
    }

    function test_3_show_why() {
        verify(win.documents.open(demoFolder + "between-two-sizes.json"))
        holdsTheTruth()
        measure("arm_to_grip_mm", "armlong")
        holdsTheTruth() // the slip changed nothing
        keyClick(Qt.Key_F5)
        const view = find("riderView")
        tryVerify(() => view.item !== null)
        waitForRendering(win.contentItem)
        keyClick(Qt.Key_Right)
        waitForRendering(win.contentItem)
        keyClick(Qt.Key_Escape)
        tryVerify(() => view.item === null)
        compare(win.documents.dirty, false)
    }

    // -- bad input

    function test_a_damaged_file_is_told_and_nothing_is_lost() {
        verify(win.documents.open(demoFolder + "between-two-sizes.json"))
        const before = holdsTheTruth().sentence
        verify(!win.documents.open(demoFolder + "../comfort.json"))
        verify(find("noticeText").text.indexOf("comfort.json") >= 0)
        compare(holdsTheTruth().sentence, before)
        click(find("noticeAway"))
        compare(win.documents.notice, "")
        verify(!win.documents.open(ownFolder + "nowhere.json"))
        verify(find("noticeText").text.indexOf("nowhere.json") >= 0)
        compare(holdsTheTruth().sentence, before)
    }

    function test_a_fitting_saved_is_the_same_when_opened() {
        verify(win.documents.open(demoFolder + "short-rider-large-wheels.json"))
        measure("foot_mm", "231")
        compare(win.documents.dirty, true)
        const before = holdsTheTruth().sentence
        verify(win.documents.saveAs(ownFolder + "kept.json"))
        compare(win.documents.dirty, false)
        verify(win.documents.open(demoFolder + "between-two-sizes.json"))
        verify(win.documents.open(ownFolder + "kept.json"))
        compare(truth.readings(win.session, "foot_mm"), [231])
        compare(holdsTheTruth().sentence, before)
    }

    function test_a_save_called_off_leaves_nothing_waiting() {
        measure("stature_mm", "1790")
        compare(win.documents.dirty, true)
        keyClick(Qt.Key_N, Qt.ControlModifier)
        click(find("unsavedSave"))
        const picker = find("picker")
        tryVerify(() => picker.item !== null)
        picker.item.reject()
        compare(truth.readings(win.session, "stature_mm"), [1790])
        // Saved later by itself, the new fitting that was called off does not come after all.
        keyClick(Qt.Key_S, Qt.ControlModifier)
        picker.item.picked(ownFolder + "later.json")
        compare(win.documents.dirty, false)
        compare(truth.readings(win.session, "stature_mm"), [1790])
        picker.item.reject()
    }

    function test_a_fitting_gives_way_once_it_is_saved() {
        measure("stature_mm", "1790")
        keyClick(Qt.Key_N, Qt.ControlModifier)
        click(find("unsavedSave"))
        const picker = find("picker")
        tryVerify(() => picker.item !== null)
        picker.item.picked(ownFolder + "first.json")
        compare(truth.readings(win.session, "stature_mm"), [])
        picker.item.reject()
        verify(win.documents.open(ownFolder + "first.json"))
        compare(truth.readings(win.session, "stature_mm"), [1790])
    }

    function test_another_fitting_forgets_what_was_being_typed() {
        verify(win.documents.open(demoFolder + "between-two-sizes.json"))
        typeInto(find("input", find("stature_mm", find("brief"))), "1655")
        compare(truth.readings(win.session, "stature_mm"), [1655])
        verify(win.documents.open(demoFolder + "short-rider-large-wheels.json"))
        const own = truth.readings(win.session, "stature_mm")
        click(find("decisionTitle")) // the keys leave the field
        compare(truth.readings(win.session, "stature_mm"), own)
        compare(win.documents.dirty, false)
    }

    function test_a_long_note_is_read_from_its_beginning() {
        verify(win.documents.open(demoFolder + "between-two-sizes.json"))
        const notes = find("notes", find("brief"))
        compare(notes.cursorPosition, 0)
        reveal(notes)
        compare(notes.cursorPosition, notes.length) // to write on
        for (const letter of " and more of it than the line has room for")
            keyClick(letter)
        verify(notes.text.endsWith("has room for"))
        keyClick(Qt.Key_Tab)
        compare(notes.cursorPosition, 0)
    }

    function test_every_number_takes_any_text() {
        verify(win.documents.open(demoFolder + "between-two-sizes.json"))
        const before = holdsTheTruth().sentence
        const brief = find("brief")
        for (const key of ["stature_mm", "inseam_mm", "arm_to_grip_mm", "foot_mm"]) {
            const readings = truth.readings(win.session, key)
            for (const text of ["", "-1", "1e9", "½x", "\"", "ten", "0x10", ",,", "9999999999"]) {
                const input = find("input", find(key, brief))
                typeInto(input, text)
                if (text !== "")
                    keyClick(Qt.Key_Tab)
                reveal(input)
                keyClick(Qt.Key_Escape)
                compare(truth.readings(win.session, key), readings, key + " “" + text + "”")
            }
        }
        compare(holdsTheTruth().sentence, before)
    }
}
