// SPDX-License-Identifier: MIT
#include <QTest>

#include "handling/rigid_body.h"

using namespace tripoise;

class TestRigidBody : public QObject {
    Q_OBJECT

private slots:
    // Derived: 3 kg at the origin and 1 kg at (8, 4) balance at (2, 1); about it sum m y^2 is
    // 3 * 1 + 1 * 9 = 12, sum m x^2 is 3 * 4 + 36 = 48, sum m x y is 3 * 2 + 6 * 3 = 24.
    void shouldPutPointsTogether()
    {
        const RigidBody whole = together({3.0, Point(0.0, 0.0), {}}, {1.0, Point(8.0, 4.0), {}});
        QCOMPARE(whole.massKg, 4.0);
        QCOMPARE(whole.centre, Point(2.0, 1.0));
        QCOMPARE(whole.inertia, (Inertia{12.0, 48.0, 60.0, 24.0}));
    }

    void shouldNotDependOnTheOrder()
    {
        const RigidBody a{3.0, Point(1.0, 2.0), {1.0, 2.0, 3.0, 0.5}};
        const RigidBody b{2.0, Point(-4.0, 7.0), {2.0, 1.0, 4.0, -0.5}};
        const RigidBody c{5.0, Point(3.0, -6.0), {3.0, 3.0, 3.0, 0.0}};
        const RigidBody one = together(together(a, b), c);
        const RigidBody other = together(a, together(c, b));
        QVERIFY((one.centre - other.centre).norm() < 1e-12);
        QVERIFY(std::abs(one.inertia.xx - other.inertia.xx) < 1e-9);
        QVERIFY(std::abs(one.inertia.xy - other.inertia.xy) < 1e-9);
    }

    void shouldIgnoreWhatHasNoMass()
    {
        const RigidBody a{3.0, Point(1.0, 2.0), {1.0, 2.0, 3.0, 0.5}};
        QCOMPARE(together(a, RigidBody()), a);
        QCOMPARE(together(RigidBody(), a), a);
        QVERIFY(together(RigidBody(), RigidBody()).centre.allFinite());
    }
};

QTEST_APPLESS_MAIN(TestRigidBody)
#include "tst_rigid_body.moc"
