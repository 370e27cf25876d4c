// SPDX-License-Identifier: MIT
//
// Fittings as files: opened, saved, recovered; and what a shop keeps from one fitting to the next.
#pragma once

#include "session/drafts.h"
#include "session/open_file.h"
#include "session/session.h"
#include "session/shop.h"

#include <QPointer>
#include <QTimer>
#include <QUrl>

namespace tripoise {

class Documents : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(tripoise::Session* session READ session WRITE setSession NOTIFY sessionChanged)
    Q_PROPERTY(QString name READ name NOTIFY changed)
    Q_PROPERTY(QString title READ title NOTIFY changed)
    Q_PROPERTY(QString filePath READ filePath NOTIFY changed)
    Q_PROPERTY(QUrl folderUrl READ folderUrl NOTIFY changed)
    Q_PROPERTY(QString suggestedName READ suggestedName NOTIFY changed)
    Q_PROPERTY(QString sheetName READ sheetName NOTIFY changed)
    Q_PROPERTY(bool dirty READ dirty NOTIFY changed)
    Q_PROPERTY(QString lastFrames READ lastFrames NOTIFY changed)
    Q_PROPERTY(bool readOnly READ readOnly NOTIFY changed)
    Q_PROPERTY(QStringList recents READ recents NOTIFY recentsChanged)
    Q_PROPERTY(QString notice READ notice NOTIFY noticeChanged)
    Q_PROPERTY(QString noticeLevel READ noticeLevel NOTIFY noticeChanged)

public:
    enum Outcome {
        Failed,
        Saved,
        Taken ///< another file stands there: whether it is to be replaced is to be asked
    };
    Q_ENUM(Outcome)

    explicit Documents(QObject* parent = nullptr);

    [[nodiscard]] Session* session() const { return m_session; }
    void setSession(Session* session);

    /// What the window starts with: a file, else what was not saved last time, else a new fitting.
    Q_INVOKABLE void begin(const QString& startFile);
    /// The window closes, and its user knows what is saved.
    Q_INVOKABLE void end();

    Q_INVOKABLE void newFitting();     ///< empty, with the shop's box
    Q_INVOKABLE void takeLastFrames(); ///< the sizes of the fitting before, and its wheels
    Q_INVOKABLE bool open(const QUrl& file);
    Q_INVOKABLE bool openPath(const QString& path);
    /// A fitting is opened; a frame file's sizes become candidates.
    Q_INVOKABLE bool drop(const QUrl& file);
    Q_INVOKABLE bool isFrameFile(const QUrl& file) const;
    Q_INVOKABLE bool isTableFile(const QUrl& file) const; ///< by its name
    Q_INVOKABLE bool save();
    /// Over another file only where that is said.
    Q_INVOKABLE Outcome saveAs(const QUrl& file, bool replace = false);
    /// The set-up sheet of what is decided, as a PDF for "a4" or "letter"; over another file only
    /// where that is said.
    Q_INVOKABLE Outcome writeSheet(const QUrl& file, const QString& paper, bool replace = false);
    /// Whether something is decided that can be set up; tells why not.
    Q_INVOKABLE bool canHandOver();
    /// What goes when the rider is deleted, and what stays.
    Q_INVOKABLE QStringList kept() const;
    /// The rider's file and all that is kept of the rider; a new fitting takes its place.
    Q_INVOKABLE bool deleteRider();
    Q_INVOKABLE QString nameOf(const QString& path) const;
    Q_INVOKABLE void dismissNotice() { tell({}, {}); }

    [[nodiscard]] QString name() const;  ///< of the rider, else of the file
    [[nodiscard]] QString title() const; ///< for the window's frame
    [[nodiscard]] const QString& filePath() const { return m_file.path(); }
    [[nodiscard]] QUrl folderUrl() const;
    [[nodiscard]] QString suggestedName() const;
    [[nodiscard]] QString sheetName() const;
    [[nodiscard]] bool dirty() const;
    [[nodiscard]] QString lastFrames() const; ///< what they are called; empty without any
    [[nodiscard]] bool readOnly() const { return m_readOnly; }
    [[nodiscard]] QStringList recents() const;
    [[nodiscard]] const QString& notice() const { return m_notice; }
    [[nodiscard]] const QString& noticeLevel() const { return m_noticeLevel; }

    /// The shop's box of parts, kept from one fitting to the next.
    [[nodiscard]] Stock shopBox();
    void rememberBox(const Stock& box);

signals:
    void sessionChanged();
    void changed();
    void recentsChanged();
    void noticeChanged();
    void boxChanged();

private:
    bool isHere(const QUrl& file);
    Outcome write(const QString& path, bool replace);
    bool recover(const QString& origin, QStringList& damaged);
    void adopt(Fitting fitting, const QString& path, bool readOnly, const QByteArray& bytes);
    void keepDraft();
    void draftWritten(const std::optional<QString>& failure);
    void fileVanished();
    void fileChanged();
    void fileCameBack();
    [[nodiscard]] QString fileName() const;
    void remember(const QString& path);
    void tell(const QString& notice, const QString& level);
    void tellToo(const QString& notice, const QString& level); ///< under what is told already

    QPointer<Session> m_session;
    Fitting m_saved;
    Fitting m_lastFrames; ///< nothing but them
    OpenFile m_file;
    shop::KnownBox m_box;
    bool m_readOnly = false;
    bool m_draftFails = false;
    QString m_notice;
    QString m_noticeLevel;
    QTimer m_draftSoon;
    Drafts m_drafts; // last: its thread ends first
};

} // namespace tripoise
