// SPDX-License-Identifier: MIT
//
// What stands on the board: the size looked at as advised or as pulled about, the one beside it,
// the bicycle of today.
#pragma once

#include "advice/trial.h"
#include "board/pulling.h"
#include "drawing/side_view.h"
#include "session/session.h"

#include <optional>

namespace tripoise {

struct SceneOptions {
    Registration registration = Registration::Ground;
    std::optional<Angle> crank; ///< at the bottom of the turn where empty
    bool beside = true;
    bool ridden = true;
};

class Scene {
public:
    /// Made anew from what the session shows. `live` are contacts being pulled at this moment;
    /// without them, those of the fitting's trial, if it is on the size looked at.
    void make(const Session& session, const SceneOptions& options,
              const std::optional<Contacts>& live);
    void clear() { *this = Scene(); }

    [[nodiscard]] const SideView& view() const { return m_view; }
    /// As advised and with the crank at the bottom: what the drawing is fitted by, so that nothing
    /// that is pulled or turned moves all the rest.
    [[nodiscard]] const SideView& still() const { return m_still; }
    [[nodiscard]] const std::optional<Tried>& tried() const { return m_tried; }
    /// Of the size looked at, as tried or as advised; empty without a set-up.
    [[nodiscard]] const std::optional<Contacts>& contacts() const { return m_contacts; }
    [[nodiscard]] const AdvisedSetup* advised() const;
    [[nodiscard]] const Ride* ride() const; ///< of the same
    [[nodiscard]] const PreparedSize* size() const;
    [[nodiscard]] std::optional<Bench> bench() const;
    [[nodiscard]] const Prepared* prepared() const { return m_prepared.get(); }
    [[nodiscard]] bool ownSetup() const { return m_ownSetup; } ///< what is tried was chosen
    [[nodiscard]] bool hasRidden() const { return m_hasRidden; }

private:
    std::shared_ptr<const Prepared> m_prepared;
    std::shared_ptr<const Tables> m_tables;
    std::optional<Candidate> m_candidate;
    std::optional<Contacts> m_contacts;
    std::optional<Tried> m_tried;
    bool m_hasRidden = false;
    bool m_ownSetup = false;
    SideView m_view;
    SideView m_still;
};

} // namespace tripoise
