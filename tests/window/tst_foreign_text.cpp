// SPDX-License-Identifier: MIT
//
// Names come from files of others: whatever is in them, the window shows them as they are written.
// As rich text, a name could load a picture from anywhere.
#include "window/window_fixture.h"

#include "support.h"

#include <QDirIterator>
#include <QRegularExpression>
#include <QtQml/QQmlExtensionPlugin>

Q_IMPORT_QML_PLUGIN(TripoisePlugin)

using namespace tripoise;

class TestForeignText : public QObject {
    Q_OBJECT

    OwnFolders m_folders;

    [[nodiscard]] QString fileWith(const std::string& name) const
    {
        Fitting fitting = test::demoFitting();
        fitting.rider.label = fitting.rider.notes = name;
        for (FrameSize& frame : fitting.frames)
            frame.size = name + frame.size;
        for (Bar& bar : fitting.stock.bars)
            bar.name = name;
        QFile file(m_folders.path(QStringLiteral("strange.json")));
        if (!file.open(QIODevice::WriteOnly))
            throw std::runtime_error("cannot write");
        file.write(QByteArray::fromStdString(writeFitting(fitting)));
        return file.fileName();
    }

private slots:
    void shouldShowMarkupAsItIsWritten()
    {
        const QString name = QStringLiteral("<img src='http://127.0.0.1:9/x'><b>&amp;");
        const OpenWindow open(fileWith(name.toStdString()));
        QVERIFY(open.settle());
        const int plain = 0; // Text.PlainText
        int shown = 0;
        for (QQuickItem* item : itemsUnder(open.window()->contentItem())) {
            const QVariant format = item->property("textFormat");
            if (!format.isValid())
                continue;
            const QString text = item->property("text").toString();
            QVERIFY2(format.toInt() == plain, qPrintable(text));
            shown += text.contains(name) ? 1 : 0;
        }
        QVERIFY(shown > 4); // title, verdict, two chips twice
    }

    // Menus, hints and pages that are not open.
    void shouldSayOfEveryTextThatItIsPlain()
    {
        static const QRegularExpression texts(QStringLiteral("\\b(Text|TextEdit|TextArea) \\{"));
        static const QRegularExpression plain(
            QStringLiteral("textFormat: Text(Edit)?\\.PlainText"));
        int found = 0;
        QDirIterator files(QStringLiteral(TRIPOISE_ASSETS "/../qml"), {QStringLiteral("*.qml")},
                           QDir::Files, QDirIterator::Subdirectories);
        while (files.hasNext()) {
            const QString path = files.next();
            const QString source = QString::fromStdString(test::textOf(path));
            const auto count = source.count(texts);
            QVERIFY2(source.count(plain) == count, qPrintable(path));
            found += int(count);
        }
        QVERIFY(found > 8);
    }

    void shouldKeepALongNameInItsColumn()
    {
        const OpenWindow open(fileWith(std::string(990, 'W')));
        open.window()->resize(1280, 800);
        QVERIFY(open.settle());
        QVERIFY(open.window()->grabWindow().width() > 0);
        const double right = open.window()->width();
        for (QQuickItem* item : itemsUnder(open.window()->contentItem()))
            if (item->isVisible() && item->property("textFormat").isValid()
                && item->property("text").toString().contains(QStringLiteral("WWW"))
                && !item->parentItem()->parentItem()->clip()) {
                const double end =
                    item->mapToScene({item->property("contentWidth").toDouble(), 0}).x();
                QVERIFY2(end <= right, qPrintable(item->property("text").toString()));
            }
    }
};

QTEST_MAIN(TestForeignText)
#include "tst_foreign_text.moc"
