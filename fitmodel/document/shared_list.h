// SPDX-License-Identifier: MIT
#pragma once

#include <initializer_list>
#include <memory>
#include <utility>
#include <vector>

namespace tripoise {

/// A list whose entries never change, so that copies share them: each step of a history is a copy.
template <typename Entry> class SharedList {
public:
    SharedList() = default;
    SharedList(std::initializer_list<Entry> entries) : SharedList(std::vector<Entry>(entries)) {}
    SharedList(std::vector<Entry> entries)
    {
        if (!entries.empty())
            m_entries = std::make_shared<const std::vector<Entry>>(std::move(entries));
    }

    [[nodiscard]] const std::vector<Entry>& all() const
    {
        static const std::vector<Entry> none;
        return m_entries ? *m_entries : none;
    }
    [[nodiscard]] auto begin() const { return all().begin(); }
    [[nodiscard]] auto end() const { return all().end(); }
    [[nodiscard]] std::size_t size() const { return all().size(); }
    [[nodiscard]] const Entry& operator[](std::size_t index) const { return all()[index]; }

    bool operator==(const SharedList& other) const
    {
        return m_entries == other.m_entries || all() == other.all();
    }

private:
    std::shared_ptr<const std::vector<Entry>> m_entries; ///< null where there are none
};

} // namespace tripoise
