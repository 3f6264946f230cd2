#pragma once

// The floors of the house: which room may use which.
//
// A room uses only rooms on lower floors. The inspector is the exception that
// proves plans: it uses nouns only, and besides the two nouns of `job`, though
// `job` stands on it.

#include <string>
#include <vector>

#include "source_tree.h"

namespace foldyard::house {

// The floor of a core room; −1 for what is no core room.
int floor_of(const std::string& room);

// Paths named by #include "…" or <…>, in order.
std::vector<std::string> includes_of(const std::string& text);

// Each returns one sentence a fault; none means sound.
std::vector<std::string> upward_includes(const Source& source);
std::vector<std::string> qt_in_core(const Source& source);
std::vector<std::string> widgets_below_window(const Source& source);

struct RoomLinks {
  std::string room;
  std::vector<std::string> links;
};
// Reads foldyard_room(name LINKS …) and foldyard_app_room(…) lines.
std::vector<RoomLinks> room_links(const std::string& cmake_text);
std::vector<std::string> upward_links(const std::vector<RoomLinks>& rooms);
// Includes of rooms that the room of this source does not link.
std::vector<std::string> unlinked_includes(const Source& source, const std::vector<RoomLinks>& rooms);
// Rooms below the window that link Widgets.
std::vector<std::string> widget_links(const std::vector<RoomLinks>& app_rooms);

}  // namespace foldyard::house
