// SPDX-License-Identifier: MIT
#include "document/fitting.h"
#include "support.h"

#include <QtTest>

using namespace tripoise;

class TestSharedList : public QObject {
    Q_OBJECT

private slots:
    void shouldShareWhatIsKeptOfAFileAmongCopiesOfAFitting()
    {
        Fitting fitting = test::demoFitting();
        fitting.kept = {{"/colour", "\"red\""}, {"/notes", "[]"}};
        Fitting edited = fitting;
        edited.frames.pop_back();
        const Fitting again = edited;
        QCOMPARE(&again.kept[0], &fitting.kept[0]);
        QCOMPARE(again.kept.size(), std::size_t(2));
    }

    void shouldCompareByWhatIsInIt()
    {
        const SharedList<int> none;
        const SharedList<int> one{1, 2};
        const SharedList<int> same{1, 2};
        QVERIFY(&one[0] != &same[0]);
        QVERIFY(one == same);
        QVERIFY(one != (SharedList<int>{1, 3}));
        QVERIFY(one != none);
        QVERIFY(none == SharedList<int>(std::vector<int>()));
        QCOMPARE(none.size(), std::size_t(0));
        QVERIFY(none.begin() == none.end());
    }
};

QTEST_APPLESS_MAIN(TestSharedList)
#include "tst_shared_list.moc"
