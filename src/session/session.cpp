// SPDX-License-Identifier: MIT
#include "session/session.h"

#include "document/builders_choice.h"
#include "shipped/tables.h"

#include <tuple>

namespace tripoise {
namespace {

constexpr std::size_t mostSteps = 300;
constexpr int patienceMs = 300;

} // namespace

Session::Session(QObject* parent)
    : QObject(parent), m_steps{{}}, m_solver(shippedTables(), [this](quint64 question, Solution s) {
          QMetaObject::invokeMethod(
              this,
              [this, question, solution = std::move(s)]() mutable {
                  receive(question, std::move(solution));
              },
              Qt::QueuedConnection);
      })
{
    m_patience.setSingleShot(true);
    m_patience.setInterval(patienceMs);
    connect(&m_patience, &QTimer::timeout, this, [this] {
        m_busy = true;
        emit busyChanged();
    });
    connect(this, &Session::speechChanged, this, &Session::tellAnswer);
    ask();
}

Session::~Session() = default;

void Session::edit(Fitting next, const QString& what, const QString& mergeKey)
{
    if (next == m_fitting)
        return;
    m_steps.resize(m_at + 1);
    const bool merges =
        !m_sealed && !mergeKey.isEmpty() && m_at > 0 && m_steps[m_at].mergeKey == mergeKey;
    if (merges) {
        m_steps[m_at].fitting = next;
    } else {
        m_steps.push_back({next, what, mergeKey});
        if (m_steps.size() > mostSteps)
            m_steps.erase(m_steps.begin());
        m_at = m_steps.size() - 1;
    }
    m_sealed = false;
    show(next);
    emit historyChanged();
}

void Session::start(Fitting fitting)
{
    m_steps.assign(1, {fitting, {}, {}});
    m_at = 0;
    m_sealed = true;
    m_lookShown.reset();
    m_lookBeside.reset();
    m_fitting = std::move(fitting);
    emit started();
    emit fittingChanged();
    emit historyChanged();
    emit lookChanged();
    ask();
}

void Session::sealStep()
{
    m_sealed = true;
}

void Session::undo()
{
    if (!canUndo())
        return;
    --m_at;
    m_sealed = true;
    show(m_steps[m_at].fitting);
    emit historyChanged();
}

void Session::redo()
{
    if (!canRedo())
        return;
    ++m_at;
    m_sealed = true;
    show(m_steps[m_at].fitting);
    emit historyChanged();
}

QString Session::undoText() const
{
    return canUndo() ? m_steps[m_at].what : QString();
}

QString Session::redoText() const
{
    return canRedo() ? m_steps[m_at + 1].what : QString();
}

void Session::show(const Fitting& fitting)
{
    const bool asked = !sameQuestion(fitting, m_fitting);
    const bool chosen = !sameWord(fitting.choices, m_fitting.choices);
    const std::pair looked(shownFrame(), besideFrame());
    m_fitting = fitting;
    if (asked)
        ask();
    emit fittingChanged(); // not settled, where an answer is to come
    if (looked != std::pair(shownFrame(), besideFrame()))
        emit lookChanged();
    if (chosen)
        tellAnswer();
}

void Session::ask()
{
    m_question = m_solver.ask(m_fitting);
    setSettled(false);
    if (!m_patience.isActive() && !m_busy)
        m_patience.start();
}

void Session::receive(quint64 question, Solution solution)
{
    if (question != m_question)
        return;
    const std::pair looked(shownFrame(), besideFrame());
    m_solution = std::move(solution);
    m_patience.stop();
    if (std::exchange(m_busy, false))
        emit busyChanged();
    setSettled(true);
    if (looked != std::pair(shownFrame(), besideFrame()))
        emit lookChanged();
    emit solutionChanged();
    tellAnswer();
}

void Session::tellAnswer()
{
    emit answerArrived();
    emit answerChanged();
}

void Session::setSettled(bool settled)
{
    if (std::exchange(m_settled, settled) != settled)
        emit settledChanged();
}

void Session::look(int shown, int beside)
{
    const auto names = std::pair(nameOf(shown), nameOf(beside));
    if (names == std::pair(m_lookShown, m_lookBeside))
        return;
    std::tie(m_lookShown, m_lookBeside) = names;
    emit lookChanged();
    tellAnswer();
}

std::optional<Session::FrameName> Session::nameOf(int frame) const
{
    const auto& frames = m_solution.fitting.frames;
    if (frame < 0 || std::size_t(frame) >= frames.size())
        return std::nullopt;
    return FrameName(frames[std::size_t(frame)].model, frames[std::size_t(frame)].size);
}

int Session::frameCalled(const std::optional<FrameName>& name) const
{
    for (int frame = 0; name && frame < int(m_solution.fitting.frames.size()); ++frame)
        if (nameOf(frame) == name)
            return frame;
    return -1;
}

std::optional<std::size_t> Session::candidateOf(int frame) const
{
    const auto& candidates = m_solution.advice.candidates;
    for (std::size_t i = 0; i < candidates.size(); ++i)
        if (frame >= 0 && candidates[i].size == std::size_t(frame))
            return i;
    return std::nullopt;
}

std::optional<std::size_t> Session::shownCandidate() const
{
    if (const auto chosen = candidateOf(askedShown()))
        return chosen;
    return followedCandidate();
}

std::optional<std::size_t> Session::followedCandidate() const
{
    const Advice& advice = m_solution.advice;
    if (advice.candidates.empty())
        return std::nullopt;
    const auto chosen = chosenCandidate(m_fitting.choices, advice, *m_solution.prepared);
    return chosen ? chosen : advice.verdict.named.value_or(0);
}

std::optional<std::size_t> Session::besideCandidate() const
{
    const auto shown = shownCandidate();
    if (!shown)
        return std::nullopt;
    const auto chosen = candidateOf(askedBeside());
    if (chosen && chosen != shown)
        return chosen;
    const Advice& advice = m_solution.advice;
    if (const std::size_t leading = advice.verdict.named.value_or(0); *shown != leading)
        return leading;
    if (advice.verdict.other)
        return advice.verdict.other;
    for (std::size_t i = 0; i < advice.candidates.size(); ++i)
        if (i != *shown)
            return i;
    return std::nullopt;
}

int Session::shownFrame() const
{
    const auto candidate = shownCandidate();
    return candidate ? int(m_solution.advice.candidates[*candidate].size) : -1;
}

int Session::besideFrame() const
{
    const auto candidate = besideCandidate();
    return candidate ? int(m_solution.advice.candidates[*candidate].size) : -1;
}

} // namespace tripoise
