// SPDX-License-Identifier: MIT
//
// Fittings as files: opened, saved, recovered; and what a shop keeps from one fitting to the next.
//
// A fitting of the fittings' folder is written by itself within a second of an edit, beside the
// window's thread; a new one gets its file there with its first edit. One that was opened elsewhere
// is saved when that is asked for. What is not in its file lies in a draft.
#pragma once

#include "fittings/autosave.h"
#include "session/drafts.h"
#include "session/open_file.h"
#include "session/session.h"
#include "session/shop.h"

#include <QPointer>
#include <QTimer>
#include <QUrl>

namespace tripoise {

struct Traces;
/// What stood in a file of the folder is kept as a version when it is first written, after it was
/// saved on purpose, and else this often, so that the versions that are kept reach back.
inline constexpr int versionEveryMs = 5 * 60 * 1000;

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
    Q_PROPERTY(bool inLibrary READ inLibrary NOTIFY changed)
    Q_PROPERTY(bool readOnly READ readOnly NOTIFY changed)
    Q_PROPERTY(bool lookingBack READ lookingBack NOTIFY changed)
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

    Q_INVOKABLE void newFitting(); ///< with the shop's box and the last fitting's sizes
    Q_INVOKABLE bool open(const QUrl& file);
    Q_INVOKABLE bool openPath(const QString& path);
    /// A fitting is copied into the folder and opened; a frame file's sizes become candidates.
    Q_INVOKABLE bool drop(const QUrl& file);
    Q_INVOKABLE bool isFrameFile(const QUrl& file) const;
    Q_INVOKABLE bool isTableFile(const QUrl& file) const; ///< by its name
    /// Begins to, for a fitting of the folder.
    Q_INVOKABLE bool save();
    Q_INVOKABLE bool saveNow(); ///< true once it is
    /// Begins to write what is not in the file, to it or to a draft.
    Q_INVOKABLE void keep();
    /// Has all written that is written by itself; true where nothing is left to be saved.
    Q_INVOKABLE bool settle();
    /// Over another file only where that is said.
    Q_INVOKABLE Outcome saveAs(const QUrl& file, bool replace = false);
    /// A copy of a file, or of what is on the screen where it is that file or none; the fitting
    /// stays where it is.
    Q_INVOKABLE Outcome exportTo(const QString& path, const QUrl& file, bool replace = false);
    Q_INVOKABLE bool duplicate(); ///< what is on the screen goes on in a file of its own
    Q_INVOKABLE bool duplicateOf(const QString& path);
    /// Where fittings are from now on; false where that is no folder of this computer.
    Q_INVOKABLE bool chooseFolder(const QUrl& folder);
    /// The rider's name; a file that has its name by the program follows.
    Q_INVOKABLE bool rename(const QString& path, const QString& rider);
    /// One of the copies of a file, to look at only.
    Q_INVOKABLE bool openVersion(const QString& path, const QString& copy);
    /// What is looked at becomes what the file holds; what it held is kept as a version.
    Q_INVOKABLE bool bringBack();
    /// The set-up sheet of what is decided, as a PDF for "a4" or "letter"; over another file only
    /// where that is said.
    Q_INVOKABLE Outcome writeSheet(const QUrl& file, const QString& paper, bool replace = false);
    /// Whether something is decided that can be set up; tells why not.
    Q_INVOKABLE bool canHandOver();
    /// What goes when the rider of a file, or of what is on the screen, is deleted, and what stays.
    Q_INVOKABLE QStringList kept(const QString& path = {}) const;
    /// The rider's file and all that is kept of the rider; a new fitting takes the place of it.
    Q_INVOKABLE bool deleteRider(const QString& path = {});
    Q_INVOKABLE QString riderOf(const QString& path) const; ///< its name; empty for none
    Q_INVOKABLE void dismissNotice() { tell({}, {}); }

    [[nodiscard]] QString name() const;  ///< of the rider, else of the file
    [[nodiscard]] QString title() const; ///< for the window's frame
    [[nodiscard]] const QString& filePath() const { return m_file.path(); }
    [[nodiscard]] QUrl folderUrl() const;
    [[nodiscard]] QString suggestedName() const;
    [[nodiscard]] QString sheetName() const;
    [[nodiscard]] bool dirty() const;
    [[nodiscard]] bool inLibrary() const; ///< it is written by itself, or will be
    [[nodiscard]] bool readOnly() const { return m_only != Only::No; }
    [[nodiscard]] bool lookingBack() const { return m_only == Only::Earlier; }
    [[nodiscard]] const QString& notice() const { return m_notice; }
    [[nodiscard]] const QString& noticeLevel() const { return m_noticeLevel; }

    /// The shop's box of parts, kept from one fitting to the next.
    [[nodiscard]] Stock shopBox();
    void rememberBox(const Stock& box);

signals:
    void sessionChanged();
    void changed();
    void filed(); ///< a file of the folder is written, is another or is gone
    void noticeChanged();
    void boxChanged();

private:
    /// Why a fitting is to be looked at only.
    enum class Only { No, Newer, OpenElsewhere, Earlier };

    bool isHere(const QUrl& file);
    [[nodiscard]] bool isOpen(const QString& path) const;
    [[nodiscard]] bool writesItself() const; ///< and its file is as it was left
    void beginWriting();
    void takeWritten(bool wait);
    void written(const Autosave::Written& result);
    void sayWhyReadOnly();
    bool goOnInNewFile();
    bool copyIn(const QString& path);
    void followRider();
    void followName(const QString& path, const std::string& before, const std::string& rider);
    [[nodiscard]] Traces tracesOfRider(const QString& path) const;
    Outcome write(const QString& path, bool replace);
    bool recover(const QString& origin, QStringList& damaged);
    void adopt(Fitting fitting, const QString& path, Only only, const QByteArray& bytes);
    void draftWritten(const std::optional<QString>& failure);
    void fileVanished();
    void fileChanged();
    void fileCameBack();
    [[nodiscard]] QString fileName() const;
    void tell(const QString& notice, const QString& level);
    void tellToo(const QString& notice, const QString& level); ///< under what is told already

    QPointer<Session> m_session;
    Fitting m_saved;
    OpenFile m_file;
    shop::KnownBox m_box;
    Only m_only = Only::No;
    QString m_versionOf;      ///< when what is looked at was written
    bool m_versionDue = true; ///< what stands in the file is to be kept when it is written next
    qint64 m_versionAtMs = 0; ///< when that was done last
    bool m_draftFails = false;
    bool m_draftLies = false; ///< of what a file of the folder could not take
    std::string m_namedFor;   ///< the rider that the file was named for
    QString m_writeFails;     ///< what was told of it; empty while writing succeeds
    QString m_notice;
    QString m_noticeLevel;
    QTimer m_draftSoon;
    Drafts m_drafts; // last: their threads end first
    Autosave m_autosave;
};

} // namespace tripoise
