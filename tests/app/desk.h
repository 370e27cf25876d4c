// SPDX-License-Identifier: MIT
//
// A session and its documents as the window has them, and files for them.
#pragma once

#include "app/own_folders.h"
#include "support.h"

#include "session/documents.h"
#include "session/store.h"

#include <QTest>

namespace tripoise::test {

inline constexpr int draftWithinMs = 1000;

inline QByteArray demoText(const char* name = "between-two-sizes")
{
    return QByteArray::fromStdString(
        textOf(QStringLiteral(TRIPOISE_ASSETS "/demo/%1.json").arg(QLatin1String(name))));
}

inline QByteArray frameModelText(int sizes)
{
    QByteArray text = R"({"format":"tripoise.frame","version":1,"model":"Weir","sizes":[)";
    for (int i = 0; i < sizes; ++i)
        text += (i > 0 ? "," : "") + QByteArray(R"({"size":")") + QByteArray::number(50 + i)
                + R"(","geometry":{"stack_mm":560,"reach_mm":380,"head_angle_deg":71,)"
                  R"("seat_angle_deg":74}})";
    return text + "]}";
}

/// A session and its documents, as the window has them.
struct Desk {
    Session session;
    Documents documents;

    explicit Desk(const QString& startFile = {})
    {
        documents.setSession(&session);
        documents.begin(startFile);
    }
    void name(const QString& label)
    {
        Fitting next = session.fitting();
        next.rider.label = label.toStdString();
        session.edit(std::move(next), QStringLiteral("the name"), QStringLiteral("name"));
    }
    [[nodiscard]] QString name() const
    {
        return QString::fromStdString(session.fitting().rider.label);
    }
};

inline QStringList drafts()
{
    return QDir(store::folder(QStringLiteral("drafts")))
        .entryList({QStringLiteral("*.json")}, QDir::Files);
}

inline bool draftHolds(const QByteArray& text)
{
    for (const QString& name : drafts())
        if (bytesOf(QDir(store::folder(QStringLiteral("drafts"))).filePath(name)).contains(text))
            return true;
    return false;
}

} // namespace tripoise::test
