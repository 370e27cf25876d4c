// SPDX-License-Identifier: MIT
//
// What must hold of the advice for any rider, over random ones (tests/properties.h).
#include "properties.h"

#include <QTest>

using namespace tripoise;
using namespace tripoise::test;

namespace {

void holds(const Tally& tally, int least)
{
    QVERIFY2(tally.tried >= least, "too few were tried");
    QVERIFY2(tally.failed == 0,
             qPrintable(QStringLiteral("%1 of %2 fail, the worst by %3, the first for a %4")
                            .arg(tally.failed)
                            .arg(tally.tried)
                            .arg(tally.worst)
                            .arg(QString::fromStdString(tally.first))));
}

} // namespace

class TestProperties : public QObject {
    Q_OBJECT

private slots:
    void shouldNotNameAFarOffSizeBesideARightOne()
    {
        holds(wrongSizeNamed(studyRuns(), 1000, 2, Offered::Run), 800);
    }

    void shouldNameNoFarOffSizeAlone()
    {
        holds(wrongSizeNamed(studyRuns(), 1000, 1, Offered::Alone), 1000);
    }

    void shouldOrderTwoWhateverAThirdIs() { holds(thirdTurnsOrder(studyRuns(), 1000, 4), 1000); }

    void shouldLetTheWeightMoveNoContact() { holds(massMoves(studyRuns(), 100, 3), 100); }

    void shouldKeepAPositionThatIsLiked()
    {
        const Kept kept = keptMoved(studyRuns(), 300, 4);
        holds(kept.saddle, 300);
        holds(kept.reach, 300);
    }
};

QTEST_APPLESS_MAIN(TestProperties)
#include "tst_properties.moc"
