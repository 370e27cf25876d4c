// SPDX-License-Identifier: MIT
//
// The finished bicycle and the visits after it, in the view models.
#include "handover/built_model.h"
#include "handover/visits_model.h"

#include "app/desk.h"

#include <QDate>
#include <QGuiApplication>
#include <QSignalSpy>

using namespace tripoise;

namespace {

const QString today = QDate::currentDate().toString(Qt::ISODate);

struct Counter : test::Desk {
    BuiltModel built;
    VisitsModel visits;

    Counter()
    {
        session.start(test::demoFitting());
        built.setSession(&session);
        visits.setSession(&session);
        ready = QTest::qWaitFor([this] { return session.settled(); });
    }
    [[nodiscard]] NumberField* field(const char* key) const
    {
        for (QObject* one : built.readings())
            if (one->objectName() == QLatin1String(key))
                return qobject_cast<NumberField*>(one);
        return nullptr;
    }
    [[nodiscard]] const Setup& advised() const
    {
        return session.solution().advice.leading().best->setup;
    }
    bool ready = false;
};

} // namespace

class TestHandover : public QObject {
    Q_OBJECT

private slots:
    void shouldHoldReadingsAgainstTheSheet()
    {
        Counter counter;
        QVERIFY(counter.ready && counter.built.ready() && !counter.built.any());
        const double wanted = counter.advised().saddle.heightMm;
        counter.field("today_height")->commit(QString::number(wanted + 1.0, 'f', 1));
        QVERIFY(counter.built.any());
        const AsBuilt& built = *counter.session.fitting().asBuilt;
        QCOMPARE(QString::fromStdString(built.date), today);
        QCOMPARE(built.size, counter.session.solution()
                                 .prepared->sizes[counter.session.solution().advice.leading().size]
                                 .frame.size);
        QVERIFY(counter.built.off().isEmpty());
        QCOMPARE(counter.built.fine().size(), 1);
        QVERIFY(counter.built.effects().isEmpty());

        counter.field("today_height")->commit(QString::number(wanted + 12.0, 'f', 1));
        QCOMPARE(counter.built.off().size(), 1);
        QVERIFY(counter.built.off()[0].contains(QString::number(std::lround(wanted + 12.0))));
        QVERIFY(counter.built.off()[0].contains(QString::number(std::lround(wanted))));
        QVERIFY(!counter.built.effects().isEmpty()); // the knee
        counter.session.undo();
        QVERIFY(counter.built.off().isEmpty() && counter.built.any());
        counter.session.undo();
        QVERIFY(!counter.built.any());

        counter.field("built_spacers")
            ->commit(QString::number(counter.advised().cockpit.spacersMm));
        QVERIFY(counter.built.any() && counter.built.off().isEmpty());
        counter.built.clear();
        QVERIFY(!counter.built.any());
    }

    void shouldNotTakeWhatCannotBe()
    {
        Counter counter;
        counter.field("today_height")->commit(QStringLiteral("7420"));
        QVERIFY(!counter.built.any());
        QVERIFY(!counter.field("today_height")->property("message").toString().isEmpty());
    }

    void shouldTellOfABicycleThatIsNoLongerAmongTheSizes()
    {
        Counter counter;
        counter.field("today_height")->commit(QStringLiteral("742"));
        Fitting next = counter.session.fitting();
        next.asBuilt->size = "gone";
        counter.session.edit(std::move(next), QStringLiteral("size"));
        QVERIFY(counter.built.off().isEmpty() && counter.built.fine().isEmpty());
        QVERIFY(!counter.built.summary().isEmpty());
    }

    void shouldProposeOneChangeAndRememberIt()
    {
        Counter counter;
        counter.visits.begin();
        QVERIFY(counter.visits.any() && counter.visits.proposals().isEmpty());
        counter.visits.toggle(QStringLiteral("hands"));
        counter.visits.toggle(QStringLiteral("nothing known"));
        QCOMPARE(counter.visits.proposals().size(), 1);
        QVariantMap first = counter.visits.proposals()[0].toMap();
        QVERIFY(first["text"].toString().contains(QStringLiteral("10 mm higher")));
        QVERIFY(!first["effects"].toStringList().isEmpty());
        QVERIFY(!first["taken"].toBool());
        counter.visits.take(0);
        QVERIFY(counter.visits.proposals()[0].toMap()["taken"].toBool());
        QCOMPARE(counter.session.fitting().visits.back().changed.barUpMm, 10.0);
        // Two that ask for the bar to rise ask for it by different amounts: one is taken.
        counter.visits.toggle(QStringLiteral("neck"));
        QVERIFY(counter.visits.proposals()[0].toMap()["taken"].toBool());
        QVERIFY(!counter.visits.proposals()[1].toMap()["taken"].toBool());
        counter.visits.toggle(QStringLiteral("neck"));
        counter.visits.take(0); // taken back
        QCOMPARE(counter.session.fitting().visits.back().changed, Moved());
        counter.visits.take(0);
        counter.visits.setPart(QStringLiteral(" softer tape "));
        QCOMPARE(counter.session.fitting().visits.back().changed.part, std::string("softer tape"));
        QCOMPARE(counter.session.fitting().visits.back().changed.barUpMm, 10.0);

        counter.visits.begin(); // they come again
        QVERIFY(counter.visits.first().isEmpty());
        counter.visits.toggle(QStringLiteral("hands"));
        QCOMPARE(counter.visits.first().size(), 1);
        QVERIFY(counter.visits.first()[0].contains(QStringLiteral("health professional")));
        QVERIFY(counter.visits.proposals()[0].toMap()["text"].toString().contains(
            QStringLiteral("tilt")));
        QCOMPARE(counter.visits.history().size(), 1);
        QVERIFY(counter.visits.history()[0].contains(QStringLiteral("Numb hands")));
        QVERIFY(counter.visits.history()[0].contains(QStringLiteral("bar 10 mm higher")));
        QVERIFY(counter.visits.history()[0].contains(QStringLiteral("softer tape")));
        counter.visits.remove();
        counter.visits.remove();
        QVERIFY(!counter.visits.any());
        counter.visits.remove();
    }

    void shouldBeReadAgainAsItWasSaved()
    {
        Counter counter;
        counter.field("today_nose")->commit(QStringLiteral("61"));
        counter.visits.begin();
        counter.visits.toggle(QStringLiteral("knee_front"));
        counter.visits.take(0);
        counter.visits.setNotes(QStringLiteral("rides to work"));
        const auto read = readFitting(writeFitting(counter.session.fitting()), test::tables());
        QVERIFY(std::holds_alternative<Fitting>(read));
        QCOMPARE(std::get<Fitting>(read).asBuilt, counter.session.fitting().asBuilt);
        QCOMPARE(std::get<Fitting>(read).visits, counter.session.fitting().visits);
    }

    void shouldWriteASheetOnlyOfWhatIsDecided()
    {
        Counter counter;
        const QTemporaryDir folder;
        const QUrl sheet = QUrl::fromLocalFile(folder.filePath(QStringLiteral("a.pdf")));
        QVERIFY(counter.documents.canHandOver());
        const bool dirty = counter.documents.dirty();
        QCOMPARE(counter.documents.writeSheet(sheet, QStringLiteral("a4")), Documents::Saved);
        QVERIFY(QFile(sheet.toLocalFile()).size() > 10'000);
        QCOMPARE(counter.documents.writeSheet(sheet, QStringLiteral("a4")), Documents::Taken);
        QCOMPARE(counter.documents.writeSheet(sheet, QStringLiteral("letter"), true),
                 Documents::Saved);
        QCOMPARE(counter.documents.writeSheet(QUrl::fromLocalFile(folder.path()),
                                              QStringLiteral("a4"), true),
                 Documents::Failed);
        QVERIFY(counter.documents.notice().contains(folder.path()));
        QCOMPARE(counter.documents.dirty(), dirty); // a sheet saves nothing
        counter.session.start(Fitting());
        QVERIFY(QTest::qWaitFor([&] { return counter.session.settled(); }));
        QVERIFY(!counter.documents.canHandOver());
        QVERIFY(!counter.documents.notice().isEmpty());
    }
};

int main(int argc, char** argv)
{
    const test::OwnFolders folders;
    const QGuiApplication application(argc, argv);
    TestHandover test;
    return QTest::qExec(&test, argc, argv);
}

#include "tst_handover.moc"
