// SPDX-License-Identifier: MIT
//
// One fitting being worked on: the draft as edited, its history, and its answer.
//
//     edit --> fitting --ask--> Solver ~~> solution --> view models --> QML
//
// An edit replaces the fitting as a whole, so undo is a list of fittings. Answers come from another
// thread, the latest edit's only.
#pragma once

#include "session/solution.h"
#include "session/solver.h"

#include <QObject>
#include <QTimer>
#include <QtQml/qqmlregistration.h>

#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace tripoise {

class Session : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(bool canUndo READ canUndo NOTIFY historyChanged)
    Q_PROPERTY(bool canRedo READ canRedo NOTIFY historyChanged)
    Q_PROPERTY(QString undoText READ undoText NOTIFY historyChanged)
    Q_PROPERTY(QString redoText READ redoText NOTIFY historyChanged)
    Q_PROPERTY(bool settled READ settled NOTIFY settledChanged)
    Q_PROPERTY(bool busy READ busy NOTIFY busyChanged)
    Q_PROPERTY(int shownFrame READ shownFrame NOTIFY lookChanged)
    Q_PROPERTY(int besideFrame READ besideFrame NOTIFY lookChanged)

public:
    explicit Session(QObject* parent = nullptr);
    ~Session() override;

    [[nodiscard]] const Fitting& fitting() const { return m_fitting; }
    [[nodiscard]] const Solution& solution() const { return m_solution; }

    /// One step that can be undone. Steps in a row with the same key, unless empty, are one.
    void edit(Fitting next, const QString& what, const QString& mergeKey = {});
    /// Another fitting altogether; nothing to undo.
    void start(Fitting fitting);
    /// The next edit is a step of its own, whatever its key.
    Q_INVOKABLE void sealStep();
    Q_INVOKABLE void undo();
    Q_INVOKABLE void redo();
    [[nodiscard]] bool canUndo() const { return m_at > 0; }
    [[nodiscard]] bool canRedo() const { return m_at + 1 < m_steps.size(); }
    [[nodiscard]] QString undoText() const; ///< what the last step was; empty without one
    [[nodiscard]] QString redoText() const;

    [[nodiscard]] bool settled() const { return m_settled; } ///< the solution answers the fitting
    [[nodiscard]] bool busy() const { return m_busy; }       ///< and has not for a while

    /// Which sizes are looked at, as indices into the frames of the fitting that is answered; -1
    /// for what the builder chose or was advised. They are known by name: an edit that moves them
    /// moves what is looked at, and of sizes that are gone the advice is followed.
    Q_INVOKABLE void look(int shown, int beside);
    [[nodiscard]] int shownFrame() const;  ///< -1 where there is none
    [[nodiscard]] int besideFrame() const; ///< -1 where there is none
    /// The same as they were asked for; -1 where the advice is followed.
    [[nodiscard]] int askedShown() const { return frameCalled(m_lookShown); }
    [[nodiscard]] int askedBeside() const { return frameCalled(m_lookBeside); }
    /// What is looked at, as indices into the advice's candidates.
    [[nodiscard]] std::optional<std::size_t> shownCandidate() const;
    /// What is looked at unasked: the builder's choice, or what was advised.
    [[nodiscard]] std::optional<std::size_t> followedCandidate() const;
    [[nodiscard]] std::optional<std::size_t> besideCandidate() const;

signals:
    void fittingChanged();
    void started(); ///< another fitting altogether
    void solutionChanged();
    void historyChanged();
    void settledChanged();
    void busyChanged();
    void lookChanged();
    void speechChanged(); ///< language or units: every text is made anew
    /// Solution, size looked at or speech: first for pictures, which may be painted beside this
    /// thread,
    void answerArrived();
    void answerChanged(); ///< then for words, made meanwhile

private:
    struct Step {
        Fitting fitting;
        QString what;
        QString mergeKey;
    };

    /// A frame by model and size.
    using FrameName = std::pair<std::string, std::string>;

    void show(const Fitting& fitting);
    void ask();
    void receive(quint64 question, Solution solution);
    void tellAnswer();
    void setSettled(bool settled);
    [[nodiscard]] std::optional<FrameName> nameOf(int frame) const;
    [[nodiscard]] int frameCalled(const std::optional<FrameName>& name) const;
    [[nodiscard]] std::optional<std::size_t> candidateOf(int frame) const;

    Fitting m_fitting;
    Solution m_solution;
    std::vector<Step> m_steps; ///< the first is what the session started with
    std::size_t m_at = 0;
    bool m_sealed = true;
    quint64 m_question = 0;
    bool m_settled = true;
    bool m_busy = false;
    QTimer m_patience;
    std::optional<FrameName> m_lookShown;
    std::optional<FrameName> m_lookBeside;
    Solver m_solver; // last: its thread must end first
};

} // namespace tripoise
