// SPDX-License-Identifier: MIT
//
// The page on which a pasted geometry table becomes candidates.
#pragma once

#include "geometry/page_reading.h"
#include "geometry/table_models.h"
#include "session/session_holder.h"

#include <QUrl>
#include <QVariantList>

#include <optional>

namespace tripoise {

class TablePage : public QObject, public SessionHolder {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(tripoise::Session* session READ session WRITE setSession NOTIFY sessionChanged)
    Q_PROPERTY(QString shownText READ shownText NOTIFY textChanged)
    Q_PROPERTY(bool wholeShown READ wholeShown NOTIFY textChanged)
    Q_PROPERTY(bool reading READ reading NOTIFY changed)
    Q_PROPERTY(QString modelName READ modelName NOTIFY changed)
    Q_PROPERTY(QVariantList models READ models NOTIFY changed)
    Q_PROPERTY(int chosen READ chosen NOTIFY changed)
    Q_PROPERTY(bool readable READ readable NOTIFY changed)
    Q_PROPERTY(QString summary READ summary NOTIFY changed)
    Q_PROPERTY(QString said READ said NOTIFY changed)
    Q_PROPERTY(bool keep READ keep NOTIFY changed)
    Q_PROPERTY(bool canKeep READ canKeep NOTIFY changed)
    Q_PROPERTY(bool canAdd READ canAdd NOTIFY changed)
    Q_PROPERTY(QString addText READ addText NOTIFY changed)
    Q_PROPERTY(QAbstractItemModel* lines READ lines CONSTANT)
    Q_PROPERTY(QAbstractItemModel* sizes READ sizes CONSTANT)
    Q_PROPERTY(QAbstractItemModel* notes READ notes CONSTANT)

public:
    explicit TablePage(QObject* parent = nullptr);

    /// The text, or the beginning of one that is too long for a field.
    [[nodiscard]] const QString& shownText() const { return m_shownText; }
    [[nodiscard]] bool wholeShown() const { return m_wholeShown; }
    /// A page's source is being read beside the window's thread; `taken` follows.
    [[nodiscard]] bool reading() const { return m_reading != 0; }
    Q_INVOKABLE void setText(const QString& text);
    Q_INVOKABLE void paste();
    /// Puts the clipboard (`selected`: what is marked in another window) into the text, from one
    /// character to another, if the result is too long for the field or the clipboard holds the
    /// cells of a page. False if the field can have it.
    Q_INVOKABLE bool pasteLong(int from, int to, bool selected);
    /// What is in the clipboard, where it is a table and there is nothing here yet.
    Q_INVOKABLE void offerClipboard();
    Q_INVOKABLE void openFile(const QUrl& file);
    Q_INVOKABLE void clear();

    [[nodiscard]] QString modelName() const;
    Q_INVOKABLE void setModelName(const QString& name);
    /// Of a text with several models' tables, of { text, value }; else none. One is worked on at a
    /// time.
    [[nodiscard]] QVariantList models() const;
    [[nodiscard]] int chosen() const { return int(m_work.chosen); }
    Q_INVOKABLE void choose(int model);
    [[nodiscard]] bool readable() const { return m_answer.read.readable(); }
    [[nodiscard]] QString summary() const;
    [[nodiscard]] const QString& said() const { return m_said; } ///< why something was not done

    /// What a column can be said to mean, of { text, key }.
    Q_INVOKABLE QVariantList meanings(int line) const;
    Q_INVOKABLE void assign(int line, const QString& key);
    /// What a click on a figure does: the correction, or back to what is printed.
    Q_INVOKABLE bool actOn(int line, int size);
    /// What the button beside a note does. The line whose meaning is to be said, else -1.
    Q_INVOKABLE int step(int note);
    Q_INVOKABLE void tick(int size, bool ticked);

    [[nodiscard]] bool keep() const { return canKeep() && m_keep; }
    [[nodiscard]] bool canKeep() const; ///< in the library, which goes by the model's name
    Q_INVOKABLE void setKeep(bool keep);
    [[nodiscard]] bool canAdd() const;
    [[nodiscard]] QString addText() const;
    /// The ticked sizes become candidates, and the model is kept if it is to be. False where that
    /// could not be done; `said` tells.
    Q_INVOKABLE bool add();

    [[nodiscard]] QAbstractItemModel* lines() { return &m_lines; }
    [[nodiscard]] QAbstractItemModel* sizes() { return &m_sizes; }
    [[nodiscard]] QAbstractItemModel* notes() { return &m_notes; }

signals:
    void sessionChanged();
    void textChanged();
    void changed();
    void taken(); ///< another table, or the clipboard has none to offer

private:
    void sessionSet() override;
    void take(std::string text);
    void put(std::string text);
    void put(TableWork work, TableAnswer answer);
    void openText(std::string text);
    void read(PageOrder order);
    void arrived(quint64 number, PageRead read);
    void letGo();
    void workOut();
    void show();
    void say(const QString& what);
    void correct(const Correction& correction);
    void leave(const Correction& correction);
    [[nodiscard]] Assignment assignmentOf(std::size_t index) const;
    void assignColumn(std::size_t index, std::optional<Column> meaning);
    [[nodiscard]] bool isSure() const;
    [[nodiscard]] std::vector<FrameSize> frames(bool onlyTicked) const;

    TableWork m_work;
    QString m_shownText;
    bool m_wholeShown = true;
    TableAnswer m_answer;
    bool m_keep = true;
    QString m_said;
    TableLinesModel m_lines;
    TableSizesModel m_sizes;
    TableNotesModel m_notes;
    quint64 m_reading = 0; ///< number of what is being read; 0 where nothing is
    PageReading m_reader;  // last: its thread must end first
};

} // namespace tripoise
