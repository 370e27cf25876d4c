// SPDX-License-Identifier: MIT
#include <QTest>

#include "base/least.h"

using namespace tripoise;

class TestLeast : public QObject {
    Q_OBJECT

private slots:
    // Derived: (x - 2)^4 + x is least where 4 (x - 2)^3 = -1, x = 2 - cbrt(1 / 4).
    void shouldFindTheBottom()
    {
        const Least least = leastWithin(-5.0, 9.0, 1e-6, [](double x) {
            return (x - 2.0) * (x - 2.0) * (x - 2.0) * (x - 2.0) + x;
        });
        QVERIFY(std::abs(least.at - (2.0 - std::cbrt(0.25))) < 1e-5);
    }
    void shouldFindAKink()
    {
        const Least least =
            leastWithin(-1.0, 4.0, 1e-6, [](double x) { return std::abs(x - 0.3); });
        QVERIFY(std::abs(least.at - 0.3) < 1e-5);
        QVERIFY(least.value < 1e-5);
    }
    void shouldGoToTheEndWhereItFallsAllTheWay()
    {
        QVERIFY(leastWithin(1.0, 3.0, 1e-6, [](double x) { return -x; }).at > 3.0 - 1e-5);
        QVERIFY(leastWithin(1.0, 3.0, 1e-6, [](double x) { return x; }).at < 1.0 + 1e-5);
    }
    // A parabola is met by the second parabolic step.
    void shouldNeedFewLooksAtAParabola()
    {
        int looks = 0;
        const Least least = leastWithin(0.0, 10.0, 1e-4, [&looks](double x) {
            ++looks;
            return (x - 3.7) * (x - 3.7);
        });
        QVERIFY(std::abs(least.at - 3.7) < 1e-3);
        QVERIFY(looks < 12);
    }
};

QTEST_APPLESS_MAIN(TestLeast)
#include "tst_least.moc"
